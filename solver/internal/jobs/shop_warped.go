package jobs

import (
	"math/rand"

	"sawbill/layout"
)

// ShopWarped are the jobs of Shop with everything that wood and bills have beside
// sizes: two boards in three are bowed, crooked, cupped or twisted, as much as
// boards that have lain in a rack for a while; the jointer takes 10 in (250 mm) and the
// planer 13 in (330 mm); and some rows of each bill may stand on edge, may be resawn,
// are bevelled, or are wanted from one board. Same jobs, whenever it is called.
func ShopWarped() []Named {
	list := Shop()
	for i := range list {
		list[i].Name += "-warped"
		warpShop(list[i].Problem, rand.New(rand.NewSource(int64(i))))
	}
	return list
}

func warpShop(p *layout.Problem, rng *rand.Rand) {
	unit := layout.Inch / 32
	p.Shop.JointerWidth, p.Shop.PlanerWidth = 10*layout.Inch, 13*layout.Inch
	if p.Shop.Units == layout.Millimetres {
		unit = layout.Millimetre / 2
		p.Shop.JointerWidth, p.Shop.PlanerWidth = 250*layout.Millimetre, 330*layout.Millimetre
	}
	gap := func(most int) layout.Length {
		if rng.Intn(3) == 0 {
			return 0
		}
		return layout.Length(rng.Intn(most+1)) * unit
	}
	for i := range p.Stock {
		if b := &p.Stock[i]; b.Faces == layout.FacesRough && rng.Intn(3) > 0 {
			b.Bow, b.Crook, b.Cup, b.Twist = gap(6), gap(6), gap(2), gap(3)
		}
	}
	for i := range p.Bill {
		part := &p.Bill[i]
		switch i % 8 {
		case 1:
			part.OnEdge = true
		case 3:
			part.Resaw = true
		case 5:
			part.Bevel = layout.Angle(5+rng.Intn(20)) * layout.Degree
		case 7:
			part.Quantity, part.Match = min(part.Quantity, 4), part.Name
		}
	}
}
