package jobs

import "sawbill/layout"

// readingRoom is one species in two thicknesses, boards of middling length.
func readingRoom() recipe {
	return recipe{name: "reading-room", unit: layout.Inches, seed: 1,
		racks: []rack{
			{boards: 18, species: "ash", thickness: "1", length: "84 to 132", width: "5 to 9", tapered: 4, faults: "40"},
			{boards: 10, species: "ash", thickness: "2", length: "60 to 108", width: "5 to 8", faults: "50"},
		},
		bill: []row{
			{"table leg", "ash", "1-5/8 x 1-5/8 x 28-1/2", 16, clear, 0},
			{"long rail", "ash", "3/4 x 3-3/4 x 46", 8, oneFace, 0},
			{"end rail", "ash", "3/4 x 3-3/4 x 21-1/4", 8, oneFace, 0},
			{"top board", "ash", "3/4 x 4-1/2 x 52", 12, oneFace, 0},
			{"bench leg", "ash", "1-1/2 x 2-1/4 x 16", 16, clear, 0},
			{"bench rail", "ash", "3/4 x 2-1/2 x 38", 8, oneFace, 0},
			{"bench seat", "ash", "3/4 x 5-1/4 x 44", 4, clear, 0},
			{"stretcher", "ash", "1-1/2 x 1-3/4 x 34", 4, sound, 0},
			{"kicker", "ash", "3/4 x 1-1/2 x 19", 8, sound, 0},
			{"button", "ash", "3/4 x 1-1/4 x 9", 12, sound, 0},
			{"shelf slip", "ash", "5/8 x 2 x 24", 10, oneFace, 0},
		}}
}

// herbDrawers is many short boards and small parts.
func herbDrawers() recipe {
	return recipe{name: "herb-drawers", unit: layout.Inches, seed: 2,
		racks: []rack{
			{boards: 34, species: "beech", thickness: "1", length: "22 to 58", width: "4 to 8", tapered: 3, faults: "28"},
			{boards: 6, species: "beech", thickness: "1-1/4", length: "40 to 70", width: "5 to 7", faults: "35"},
		},
		bill: []row{
			{"drawer front", "beech", "3/4 x 4-1/4 x 9-1/2", 20, clear, 0},
			{"drawer side", "beech", "1/2 x 3-7/8 x 11", 40, sound, 0},
			{"drawer back", "beech", "1/2 x 3-1/4 x 9", 20, sound, 0},
			{"runner", "beech", "5/8 x 1 x 11-1/4", 40, sound, 0},
			{"divider", "beech", "3/4 x 1-3/4 x 20-3/8", 8, oneFace, 0},
			{"post", "beech", "15/16 x 1-3/4 x 31", 6, clear, 0},
			{"case top", "beech", "3/4 x 5-5/8 x 33", 2, oneFace, 0},
			{"case foot", "beech", "15/16 x 3 x 13", 4, oneFace, 0},
			{"back slat", "beech", "3/8 x 2-3/4 x 29-1/2", 8, sound, 0},
		}}
}

// linenChest is few long, wide and clean boards.
func linenChest() recipe {
	return recipe{name: "linen-chest", unit: layout.Inches, seed: 3,
		racks: []rack{{boards: 15, species: "oak", thickness: "1", length: "120 to 168", width: "8 to 11-1/2"}},
		bill: []row{
			{"side panel", "oak", "3/4 x 6-1/4 x 41", 12, clear, 0},
			{"end panel", "oak", "3/4 x 6-1/4 x 18-3/4", 12, clear, 0},
			{"lid board", "oak", "3/4 x 7-1/2 x 44-1/2", 4, clear, 0},
			{"bottom", "oak", "5/8 x 4-7/8 x 19", 16, sound, 0},
			{"stile", "oak", "3/4 x 2-3/4 x 20-1/2", 16, clear, 0},
			{"rail", "oak", "3/4 x 2-3/4 x 38", 8, clear, 0},
			{"plinth long", "oak", "3/4 x 3-1/2 x 43", 4, clear, 0},
			{"plinth short", "oak", "3/4 x 3-1/2 x 20", 4, clear, 0},
			{"till side", "oak", "1/2 x 4 x 17", 8, oneFace, 0},
		}}
}

// trayBoxes is three species, each of which must come out.
func trayBoxes() recipe {
	return recipe{name: "tray-boxes", unit: layout.Inches, seed: 4,
		racks: []rack{
			{boards: 17, species: "elm", thickness: "1", length: "50 to 110", width: "4-1/2 to 9", tapered: 3, faults: "36"},
			{boards: 9, species: "pear", thickness: "1", length: "36 to 84", width: "4 to 7", faults: "30"},
			{boards: 9, species: "ash", thickness: "1-1/4", length: "72 to 120", width: "5 to 8", faults: "60"},
		},
		bill: []row{
			{"tray long", "elm", "1/2 x 3-1/8 x 18", 24, oneFace, 0},
			{"tray short", "elm", "1/2 x 3-1/8 x 12-1/4", 24, oneFace, 0},
			{"tray floor", "elm", "3/8 x 3-7/8 x 17-1/2", 18, sound, 0},
			{"box front", "pear", "5/8 x 4-5/8 x 14", 10, clear, 0},
			{"box end", "pear", "5/8 x 4-5/8 x 8-3/4", 10, clear, 0},
			{"lid", "pear", "5/8 x 4-1/4 x 14-1/2", 8, clear, 0},
			{"lid lip", "pear", "3/4 x 3/4 x 15", 10, clear, 0},
			{"handle", "ash", "1 x 1-1/4 x 12-1/2", 16, clear, 0},
			{"spline stock", "ash", "3/4 x 1-1/2 x 26", 8, sound, 0},
			{"carry rail", "ash", "1 x 2-1/2 x 40", 8, oneFace, 0},
			{"carry slat", "ash|elm", "1/2 x 2-1/4 x 22", 20, sound, 0},
			{"carry foot", "ash", "1 x 2-1/8 x 14-3/8", 8, oneFace, 0},
		}}
}

// hallShelves is knotty wood.
func hallShelves() recipe {
	return recipe{name: "hall-shelves", unit: layout.Inches, seed: 5,
		racks: []rack{{boards: 30, species: "elm", thickness: "1", length: "72 to 126", width: "5 to 9", tapered: 3, faults: "16"}},
		bill: []row{
			{"shelf", "elm", "3/4 x 4-1/2 x 33", 18, oneFace, 0},
			{"upright", "elm", "3/4 x 4-1/2 x 64", 4, sound, 0},
			{"short upright", "elm", "3/4 x 4-1/2 x 30-1/2", 6, sound, 0},
			{"cleat", "elm", "3/4 x 1-3/8 x 9", 36, sound, 0},
			{"top rail", "elm", "3/4 x 2-1/4 x 33", 6, clear, 0},
			{"peg rail", "elm", "3/4 x 3 x 48", 3, clear, 0},
			{"back board", "elm", "1/2 x 3-3/4 x 62", 8, sound, 0},
			{"drop front", "elm", "3/4 x 5-1/2 x 16-1/2", 6, clear, 0},
		}}
}

// settle is boards that all run out to a narrower tip.
func settle() recipe {
	return recipe{name: "settle", unit: layout.Inches, seed: 6,
		racks: []rack{
			{boards: 16, species: "alder", thickness: "1", length: "96 to 144", width: "7 to 10", tapered: 1, faults: "45"},
			{boards: 6, species: "alder", thickness: "2", length: "72 to 100", width: "6 to 9", tapered: 1, faults: "60"},
		},
		bill: []row{
			{"post", "alder", "1-3/4 x 2-1/2 x 46", 4, clear, 0},
			{"front leg", "alder", "1-3/4 x 2-1/2 x 17", 4, clear, 0},
			{"arm", "alder", "1-1/2 x 3-1/4 x 21", 4, clear, 0},
			{"seat board", "alder", "3/4 x 5-3/4 x 54", 6, oneFace, 0},
			{"back panel", "alder", "5/8 x 5 x 24", 20, oneFace, 0},
			{"long rail", "alder", "3/4 x 3-1/2 x 56", 8, oneFace, 0},
			{"side rail", "alder", "3/4 x 3-1/2 x 17-1/2", 8, oneFace, 0},
			{"muntin", "alder", "3/4 x 2 x 23", 10, clear, 0},
			{"cleat", "alder", "3/4 x 1-1/2 x 16", 8, sound, 0},
		}}
}

// frames is planed boards with straight edges and narrow parts.
func frames() recipe {
	return recipe{name: "frames", unit: layout.Inches, seed: 7,
		racks: []rack{
			{boards: 12, species: "birch", thickness: "3/4", length: "60 to 96", width: "3-1/2 to 7-1/2", faults: "60", faces: layout.FacesPlaned, edges: layout.EdgesBoth},
			{boards: 6, species: "birch", thickness: "1-1/4", length: "48 to 96", width: "4 to 6", faults: "70", faces: layout.FacesPlaned, edges: layout.EdgesBoth},
		},
		bill: []row{
			{"10 by 12 long", "birch", "3/4 x 1-1/4 x 15", 20, clear, 0},
			{"10 by 12 short", "birch", "3/4 x 1-1/4 x 13", 20, clear, 0},
			{"16 by 20 long", "birch", "3/4 x 1-3/8 x 23-1/4", 16, clear, 0},
			{"16 by 20 short", "birch", "3/4 x 1-3/8 x 19-1/4", 16, clear, 0},
			{"22 by 30 long", "birch", "3/4 x 1-5/8 x 33-3/4", 10, clear, 0},
			{"22 by 30 short", "birch", "3/4 x 1-5/8 x 25-3/4", 10, clear, 0},
			{"deep long", "birch", "1-1/8 x 7/8 x 18", 12, clear, 0},
			{"deep short", "birch", "1-1/8 x 7/8 x 14-1/2", 12, clear, 0},
			{"slip", "birch", "3/4 x 3/4 x 29", 14, oneFace, 0},
			{"hanger", "birch", "3/4 x 1-3/4 x 12", 20, sound, 0},
			{"easel leg", "birch", "1-1/8 x 1-1/2 x 58", 3, oneFace, 0},
			{"easel ledge", "birch", "1-1/8 x 2-1/4 x 22", 2, oneFace, 0},
		}}
}

// wideTops is parts nearly as wide as the boards.
func wideTops() recipe {
	return recipe{name: "wide-tops", unit: layout.Inches, seed: 8,
		racks: []rack{
			{boards: 18, species: "oak", thickness: "1-1/4", length: "78 to 120", width: "7 to 12", tapered: 5, faults: "44"},
			{boards: 4, species: "oak", thickness: "2", length: "50 to 80", width: "5 to 8", faults: "60"},
		},
		bill: []row{
			{"top", "oak", "1 x 8-3/4 x 36", 6, oneFace, 0},
			{"half top", "oak", "1 x 7-1/8 x 36", 8, oneFace, 0},
			{"seat", "oak", "1 x 9-1/2 x 15", 8, oneFace, 0},
			{"apron", "oak", "3/4 x 3-1/4 x 30", 8, oneFace, 0},
			{"end apron", "oak", "3/4 x 3-1/4 x 13-1/4", 8, oneFace, 0},
			{"leg", "oak", "1-5/8 x 1-5/8 x 17", 16, clear, 0},
			{"brace", "oak", "3/4 x 2 x 15-1/2", 12, sound, 0},
			{"batten", "oak", "1 x 1-3/4 x 14", 8, sound, 0},
		}}
}

// slatBed is long parts for which only few boards are long enough.
func slatBed() recipe {
	return recipe{name: "slat-bed", unit: layout.Inches, seed: 9,
		racks: []rack{
			{boards: 10, species: "ash", thickness: "1-1/4", length: "88 to 108", width: "6 to 9", faults: "60"},
			{boards: 20, species: "ash", thickness: "1", length: "44 to 76", width: "4 to 8", tapered: 3, faults: "34"},
			{boards: 5, species: "ash", thickness: "3", length: "40 to 84", width: "4 to 7", faults: "60"},
		},
		bill: []row{
			{"side rail", "ash", "1 x 5-1/2 x 79", 4, oneFace, 0},
			{"slat bearer", "ash", "1 x 1-1/4 x 77", 4, sound, 0},
			{"centre beam", "ash", "1 x 3 x 80", 2, sound, 0},
			{"slat", "ash", "3/4 x 2-3/4 x 38-1/2", 30, sound, 0},
			{"head post", "ash", "2-1/2 x 2-1/2 x 38", 4, clear, 0},
			{"foot post", "ash", "2-1/2 x 2-1/2 x 19", 4, clear, 0},
			{"head rail", "ash", "3/4 x 4 x 37", 4, clear, 0},
			{"head spindle", "ash", "3/4 x 1-1/8 x 20", 22, clear, 0},
			{"foot rail", "ash", "3/4 x 4-3/4 x 37", 2, clear, 0},
		}}
}

// cabinets is two species and every grade.
func cabinets() recipe {
	return recipe{name: "cabinets", unit: layout.Inches, seed: 10,
		racks: []rack{
			{boards: 22, species: "alder", thickness: "1", length: "78 to 132", width: "4-1/2 to 9", tapered: 4, faults: "22"},
			{boards: 16, species: "poplar", thickness: "1", length: "90 to 144", width: "5 to 10", tapered: 4, faults: "48"},
		},
		bill: []row{
			{"door stile", "alder", "3/4 x 2-1/4 x 30", 20, clear, 0},
			{"door rail", "alder", "3/4 x 2-1/4 x 11-3/8", 20, clear, 0},
			{"door panel", "alder", "1/2 x 5-7/8 x 25-3/4", 20, oneFace, 0},
			{"frame stile", "alder", "3/4 x 1-5/8 x 32", 8, clear, 0},
			{"frame rail", "alder", "3/4 x 1-5/8 x 34", 8, clear, 0},
			{"drawer face", "alder", "3/4 x 5 x 15", 8, clear, 0},
			{"skirting", "alder", "3/4 x 3-1/2 x 48", 3, oneFace, 0},
			{"crown", "alder", "3/4 x 2-5/8 x 52", 3, clear, 0},
			{"knob stock", "alder", "3/4 x 1-1/4 x 12", 3, sound, 0},
			{"drawer side", "poplar", "1/2 x 4-1/2 x 20", 16, sound, 0},
			{"drawer back", "poplar", "1/2 x 4 x 14", 8, sound, 0},
			{"web rail", "poplar", "3/4 x 2-1/2 x 33", 10, sound, 0},
			{"web end", "poplar", "3/4 x 2-1/2 x 16-1/4", 10, sound, 0},
			{"shelf board", "poplar", "3/4 x 5-3/4 x 32-1/2", 10, oneFace, 0},
			{"shelf lip", "alder|poplar", "3/4 x 1-1/8 x 32-1/2", 5, clear, 0},
			{"hanging rail", "poplar", "3/4 x 3 x 33", 6, sound, 0},
			{"runner", "poplar", "5/8 x 1-1/4 x 19", 16, sound, 0},
			{"kicker", "poplar", "5/8 x 1 x 19", 8, sound, 0},
			{"valance", "alder", "3/4 x 4-3/8 x 31", 2, clear, 0},
			{"toe block", "poplar", "3/4 x 3-3/4 x 10", 8, sound, 0},
		}}
}
