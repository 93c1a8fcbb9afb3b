package glueup

import "sawbill/layout"

// Wood is what the table of woods knows of a species. A figure of 0 is not known.
type Wood struct {
	Species string
	// Radial and Tangential are the shrinkage from green to oven-dry, in tenths of a
	// percent.
	Radial, Tangential int
	// RadialMove and TangentialMove are the change of width for one percentage point
	// of moisture content between 6 and 14 %, in hundred-thousandths of the width.
	RadialMove, TangentialMove int
	// Density is the specific gravity at 12 % moisture content, in hundredths.
	Density int
	// Hardness is the side hardness at 12 % moisture content, in pounds-force.
	Hardness int
	// OpenPored says that the wood is ring-porous, with pores that can be seen in the
	// end grain and are hard to keep clean.
	OpenPored bool
	// Sensitising says that the dust is known to sensitise.
	Sensitising bool
}

// KnownWoods is the table of woods. What it says of a species comes from:
//
//   - shrinkage: Wood Handbook, FPL-GTR-190, Forest Products Laboratory, USDA 2010,
//     table 4-3;
//   - movement: the same, table 13-5 (change of dimension, 6 to 14 % moisture);
//   - density and hardness: the same, table 5-3b;
//   - pores: the same, chapter 3 (ring-porous and diffuse-porous woods);
//   - sensitising dust: the chart of wood toxicity in American Woodturner, 1990.
//
// Figures that could not be held against these are left out. A particular board may
// move half as much again, or less.
func KnownWoods() []Wood {
	return []Wood{
		{"red alder", 44, 73, 151, 256, 41, 590, false, false},
		{"white ash", 49, 78, 169, 274, 60, 1320, true, false},
		{"black ash", 50, 78, 172, 274, 49, 850, true, false},
		{"quaking aspen", 35, 67, 119, 234, 38, 350, false, false},
		{"basswood", 66, 93, 230, 330, 37, 410, false, false},
		{"American beech", 55, 119, 190, 431, 64, 1300, false, true},
		{"paper birch", 63, 86, 219, 304, 55, 910, false, true},
		{"sweet birch", 65, 90, 256, 338, 65, 1470, false, true},
		{"yellow birch", 73, 95, 256, 338, 62, 1260, false, true},
		{"butternut", 34, 64, 116, 223, 38, 490, false, false},
		{"black cherry", 37, 71, 126, 248, 50, 950, false, false},
		{"American chestnut", 34, 67, 116, 234, 43, 540, true, false},
		{"eastern cottonwood", 39, 92, 133, 327, 40, 430, false, false},
		{"American elm", 42, 95, 144, 338, 50, 830, true, false},
		{"rock elm", 48, 81, 165, 285, 63, 1320, true, false},
		{"hackberry", 48, 89, 165, 315, 53, 880, true, false},
		{"pecan", 49, 89, 169, 315, 66, 1820, true, false},
		{"honeylocust", 0, 0, 144, 230, 0, 1580, true, false},
		{"black locust", 0, 0, 158, 252, 69, 1700, true, true},
		{"red maple", 0, 0, 137, 289, 54, 950, false, false},
		{"silver maple", 0, 0, 102, 252, 47, 700, false, false},
		{"sugar maple", 0, 0, 165, 353, 63, 1450, false, false},
		{"northern red oak", 0, 0, 158, 369, 63, 1290, true, true},
		{"white oak", 56, 105, 180, 365, 68, 1360, true, true},
		{"persimmon", 79, 112, 278, 403, 0, 0, false, false},
		{"sassafras", 40, 62, 137, 216, 46, 0, true, false},
		{"sweetgum", 53, 102, 183, 365, 52, 850, false, false},
		{"sycamore", 50, 84, 172, 296, 49, 770, false, false},
		{"black tupelo", 51, 87, 176, 308, 50, 810, false, false},
		{"black walnut", 55, 78, 190, 274, 55, 1010, false, true},
		{"yellow-poplar", 46, 82, 0, 0, 42, 540, false, false},
	}
}

// otherNames are names under which woods of the table are sold.
func otherNames() map[string]string {
	return map[string]string{
		"alder": "red alder", "ash": "white ash", "aspen": "quaking aspen", "beech": "American beech",
		"birch": "yellow birch", "cherry": "black cherry", "chestnut": "American chestnut",
		"cottonwood": "eastern cottonwood", "elm": "American elm", "hard maple": "sugar maple", "soft maple": "red maple",
		"red oak": "northern red oak", "tupelo": "black tupelo", "walnut": "black walnut", "poplar": "yellow-poplar",
		"tulipwood": "yellow-poplar",
	}
}

// WoodOf finds a species in the table, by its name there or one under which it is
// sold in North America.
func WoodOf(species string) (Wood, bool) {
	for name, known := range otherNames() {
		if layout.SameSpecies(name, species) {
			species = known
		}
	}
	for _, w := range KnownWoods() {
		if layout.SameSpecies(w.Species, species) {
			return w, true
		}
	}
	return Wood{}, false
}

// Movement is the least and the most that a width of this wood changes with the
// moisture: quartersawn and flatsawn,
//
//	change = width * coefficient * points
//
// rounded down and up (Wood Handbook, chapter 13; good between 6 and 14 % moisture).
// Both are 0 where the coefficients are not known.
func (w Wood) Movement(width layout.Length, m Moisture) (least, most layout.Length) {
	const unit = 10 * 100_000 // tenths of a point, hundred-thousandths
	n := layout.Length(m)
	least = width / unit * n * layout.Length(w.RadialMove)
	most = (width/unit + 1) * n * layout.Length(w.TangentialMove)
	if w.TangentialMove == 0 {
		return 0, 0
	}
	return least, most
}
