package layout

import (
	"slices"
	"strings"
)

// checkTogether checks what the bill asks of the stock, and resolves the marks
// in it. It expects that cs holds what was wrong with each by itself: sizes are
// not compared with boards that are at fault themselves.
func checkTogether(cs *Complaints, p *Problem) {
	faulty := map[Table]map[int]bool{ShopTable: {}, StockTable: {}, BillTable: {}}
	for _, c := range cs.Faults() {
		faulty[c.Table][c.Row] = true
	}
	species, complete := speciesOf(p.Stock)
	for i := range p.Bill {
		a := about{cs, BillTable, i}
		part := &p.Bill[i]
		part.From = resolveMarks(a, "from", part.From, p.Stock)
		part.NotFrom = resolveMarks(a, "not_from", part.NotFrom, p.Stock)
		known := !complete || checkSpecies(a, part, species)
		sound := len(faulty[ShopTable]) == 0 && len(faulty[StockTable]) == 0 && !faulty[BillTable][i]
		if known && sound {
			checkHeld(a, p, part.shortest(p.Shop))
		}
	}
	checkMatches(cs, p)
}

// checkMatches complains of a match word whose parts no one board may give.
func checkMatches(cs *Complaints, p *Problem) {
	together := map[string][]int{}
	for i := range p.Bill {
		if word := p.Bill[i].Match; word != "" {
			together[word] = append(together[word], i)
		}
	}
	for i := range p.Bill {
		word := p.Bill[i].Match
		if rows := together[word]; len(rows) < 2 || rows[0] != i {
			continue
		}
		givesAll := func(b Board) bool {
			return !slices.ContainsFunc(together[word], func(row int) bool { return !p.Bill[row].fromBoard(&b) })
		}
		if !slices.ContainsFunc(p.Stock, givesAll) {
			about{cs, BillTable, i}.fault("match", word, "want parts that one board may give: by species and marks none may give all that bear this word")
		}
	}
}

// speciesOf lists the species of the stock, each as first written, and whether
// every board names one.
func speciesOf(stock []Board) (species []string, complete bool) {
	complete = len(stock) > 0
	for _, b := range stock {
		complete = complete && strings.TrimSpace(b.Species) != ""
		if !slices.ContainsFunc(species, func(s string) bool { return SameSpecies(s, b.Species) }) {
			species = append(species, b.Species)
		}
	}
	return species, complete
}

// checkSpecies reports whether the stock has boards of one of the part's
// species. One that it lacks is a fault where there is no other to choose, and
// otherwise a warning, for it may be misspelt.
func checkSpecies(a about, part *Part, species []string) bool {
	var lacking []string
	for _, s := range part.Species {
		if !slices.ContainsFunc(species, func(t string) bool { return SameSpecies(s, t) }) {
			lacking = append(lacking, s)
		}
	}
	severity := Warning
	if len(lacking) == len(part.Species) {
		severity = Fault
	}
	for _, s := range lacking {
		if strings.TrimSpace(s) != "" {
			a.add("species", s, "of which the stock has no board: "+WantOneOf(s, species), severity)
		}
	}
	return severity == Warning
}
