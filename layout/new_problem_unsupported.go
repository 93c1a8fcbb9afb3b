package layout

import "strconv"

const notSupported = "is not supported yet: leave it empty"

// Unsupported lists what a shop, a stock or a bill asks for that no plan can
// honour yet, so that nothing a person wrote is silently ignored.
func Unsupported(shop *Shop, stock []Board, bill []Part) Complaints {
	var cs Complaints
	a := about{&cs, ShopTable, WholeTable}
	refuseLength(a, "jointer_width", shop.JointerWidth)
	refuseLength(a, "planer_width", shop.PlanerWidth)
	for i, b := range stock {
		if i > 0 && b.Base != b.Mark && stock[i-1].Base == b.Base {
			continue // one row, one complaint
		}
		a := about{&cs, StockTable, i}
		refuseLength(a, "bow", b.Bow)
		refuseLength(a, "crook", b.Crook)
		refuseLength(a, "cup", b.Cup)
		refuseLength(a, "twist", b.Twist)
	}
	for i := range bill {
		refusePart(about{&cs, BillTable, i}, &bill[i])
	}
	return cs
}

func refusePart(a about, p *Part) {
	if p.Bevel != 0 {
		a.fault("bevel", p.Bevel.String(), notSupported)
	}
	if p.OnEdge {
		a.fault("on_edge", "yes", notSupported)
	}
	if p.Resaw {
		a.fault("resaw", "yes", notSupported)
	}
	if p.Set != "" {
		a.fault("set", p.Set, notSupported)
	}
	if p.Slices != 0 {
		a.fault("slices", strconv.Itoa(p.Slices), notSupported)
	}
	refuseLength(a, "slice_thickness", p.SliceThickness)
}

func refuseLength(a about, column string, l Length) {
	if l != 0 {
		a.fault(column, l.String(), notSupported)
	}
}
