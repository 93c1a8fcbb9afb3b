package jobs

import "sawbill/layout"

// stools is millimetres and thick parts.
func stools() recipe {
	return recipe{name: "stools", unit: layout.Millimetres, seed: 11,
		racks: []rack{
			{boards: 14, species: "hornbeam", thickness: "52", length: "900 to 2400", width: "110 to 210", tapered: 4, faults: "1100"},
			{boards: 14, species: "hornbeam", thickness: "32", length: "1200 to 2600", width: "110 to 230", tapered: 4, faults: "800"},
		},
		bill: []row{
			{"leg", "hornbeam", "42 x 42 x 640", 32, clear, 0},
			{"short leg", "hornbeam", "42 x 42 x 430", 16, clear, 0},
			{"seat stave", "hornbeam", "24 x 78 x 360", 32, oneFace, 0},
			{"round seat", "hornbeam", "24 x 115 x 340", 12, oneFace, 0},
			{"upper rail", "hornbeam", "22 x 55 x 280", 24, clear, 0},
			{"lower rail", "hornbeam", "22 x 32 x 300", 24, sound, 0},
			{"foot rail", "hornbeam", "24 x 38 x 345", 12, clear, 0},
			{"wedge stock", "hornbeam", "22 x 45 x 400", 3, sound, 0},
		}}
}

// toolWall is millimetres and parts that are served in an order.
func toolWall() recipe {
	return recipe{name: "tool-wall", unit: layout.Millimetres, seed: 12,
		racks: []rack{
			{boards: 20, species: "beech", thickness: "27", length: "1500 to 3000", width: "110 to 240", tapered: 3, faults: "900"},
			{boards: 9, species: "birch", thickness: "27", length: "1200 to 2400", width: "100 to 200", faults: "700"},
		},
		bill: []row{
			{"case side", "beech", "20 x 120 x 780", 6, oneFace, 1},
			{"case top", "beech", "20 x 120 x 620", 6, oneFace, 1},
			{"door stile", "beech", "20 x 58 x 776", 8, clear, 1},
			{"door rail", "beech", "20 x 58 x 240", 8, clear, 1},
			{"plane ramp", "birch", "18 x 85 x 410", 10, sound, 2},
			{"chisel rail", "birch", "20 x 60 x 560", 8, oneFace, 2},
			{"saw till side", "birch", "18 x 105 x 330", 6, oneFace, 2},
			{"shelf", "beech", "18 x 100 x 580", 10, sound, 2},
			{"shelf stop", "beech|birch", "18 x 24 x 580", 10, sound, 0},
			{"drawer front", "beech", "20 x 72 x 285", 12, clear, 0},
			{"drawer side", "birch", "12 x 66 x 230", 24, sound, 0},
			{"drawer back", "birch", "12 x 55 x 270", 12, sound, 0},
			{"french cleat", "beech", "20 x 75 x 1150", 6, sound, 0},
			{"back batten", "beech", "15 x 45 x 740", 12, sound, 0},
		}}
}
