package jobs

import "sawbill/layout"

// Shop are a dozen jobs of the size that a small shop meets: 15 to 40 boards, 8
// to 20 kinds of part, 60 to 200 pieces, in the default shop. They differ in what
// makes a job hard, and the stock is larger than what is needed, so that nothing
// need be missing.
func Shop() []Named {
	return named(append(inchRecipes(), millimetreRecipes()...))
}

func named(recipes []recipe) []Named {
	var jobs []Named
	for i := range recipes {
		jobs = append(jobs, Named{recipes[i].name, recipes[i].problem()})
	}
	return jobs
}

func inchRecipes() []recipe {
	return []recipe{
		readingRoom(), herbDrawers(), linenChest(), trayBoxes(), hallShelves(),
		settle(), frames(), wideTops(), slatBed(), cabinets(),
	}
}

func millimetreRecipes() []recipe { return []recipe{stools(), toolWall()} }

const clear, oneFace, sound = layout.Clear, layout.OneFace, layout.Sound
