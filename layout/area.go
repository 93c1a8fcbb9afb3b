package layout

import "math/big"

// Area is an exact sum of areas in square nanometres. An int64 of square
// nanometres holds only 9.2 m², so it is kept in a big integer. The zero Area
// is ready to use.
type Area struct{ nm2 big.Int }

// Add adds length times width to a.
func (a *Area) Add(length, width Length) { a.addProduct(length, width, false) }

// Sub takes length times width from a.
func (a *Area) Sub(length, width Length) { a.addProduct(length, width, true) }

func (a *Area) addProduct(length, width Length, minus bool) {
	p := new(big.Int).Mul(big.NewInt(int64(length)), big.NewInt(int64(width)))
	if minus {
		p.Neg(p)
	}
	a.nm2.Add(&a.nm2, p)
}

// Int is the area in square nanometres. The caller may change the result.
func (a *Area) Int() *big.Int { return new(big.Int).Set(&a.nm2) }

// Times is the volume of a slab of that area and thickness.
func (a *Area) Times(thickness Length) *Volume {
	v := new(Volume)
	v.nm3.Mul(&a.nm2, big.NewInt(int64(thickness)))
	return v
}

// Volume is an exact sum of volumes in cubic nanometres. The zero Volume is
// ready to use.
type Volume struct{ nm3 big.Int }

// NewVolume is the volume of a box.
func NewVolume(length, width, thickness Length) *Volume {
	v := new(Volume)
	v.nm3.Mul(big.NewInt(int64(length)), big.NewInt(int64(width)))
	v.nm3.Mul(&v.nm3, big.NewInt(int64(thickness)))
	return v
}

// Add adds n times w to v.
func (v *Volume) Add(w *Volume, n int) {
	p := new(big.Int).Mul(&w.nm3, big.NewInt(int64(n)))
	v.nm3.Add(&v.nm3, p)
}

// Cmp compares v and w as big.Int.Cmp does.
func (v *Volume) Cmp(w *Volume) int { return v.nm3.Cmp(&w.nm3) }

// Int is the volume in cubic nanometres. The caller may change the result.
func (v *Volume) Int() *big.Int { return new(big.Int).Set(&v.nm3) }

// MM3 is the volume in cubic millimetres, rounded to the nearest float64.
func (v *Volume) MM3() float64 {
	f, _ := new(big.Rat).SetFrac(&v.nm3, big.NewInt(1e18)).Float64()
	return f
}

// BoardFeet is the volume in board feet of 144 cubic inches, rounded to the
// nearest float64.
func (v *Volume) BoardFeet() float64 {
	f, _ := new(big.Rat).SetFrac(&v.nm3, boardFoot()).Float64()
	return f
}

// boardFoot is 144 cubic inches in cubic nanometres.
func boardFoot() *big.Int { return NewVolume(12*Inch, 12*Inch, Inch).Int() }

// cubicMetre is one cubic metre in cubic nanometres.
func cubicMetre() *big.Int { return NewVolume(Metre, Metre, Metre).Int() }
