package layout

// Unsupported lists what a shop, a stock or a bill asks for that no plan can
// honour yet, so that nothing a person wrote is silently ignored.
func Unsupported(*Shop, []Board, []Part) Complaints { return nil }
