package layout

import (
	"testing"

	"pgregory.net/rapid"
)

// tan 30 is 0.577 350 269…, cos 30 is 0.866 025 403…, cos 45 is 0.707 106 781….
func TestBevels(t *testing.T) {
	shop := DefaultShop(Millimetres) // rip_kerf 3 mm
	for _, c := range []struct {
		angle      Angle
		lean, kerf Length
	}{
		{0, 0, 3_000_000},
		{30 * Degree, 11_547_006, 3_464_102},
		{45 * Degree, 20_000_000, 4_242_641},
	} {
		part := &Part{Thickness: 20 * Millimetre, Bevel: c.angle}
		if got := part.Lean(); got != c.lean {
			t.Errorf("%v degrees: lean %d, want %d", c.angle, got, c.lean)
		}
		if got := shop.BevelKerf(c.angle); got != c.kerf {
			t.Errorf("%v degrees: kerf %d, want %d", c.angle, got, c.kerf)
		}
	}
}

// An angle read back from its lean leans the same, to a micrometre.
func TestAngleOfALean(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		angle := Angle(rapid.Int64Range(0, int64(45*Degree)).Draw(t, "angle"))
		thick := Length(rapid.Int64Range(int64(Millimetre), int64(100*Millimetre)).Draw(t, "thickness"))
		lean := angle.Lean(thick)
		if again := AngleOf(lean, thick).Lean(thick); again < lean-Micrometre || again > lean+Micrometre {
			t.Fatalf("%v degrees in %v lean by %v, then by %v", angle, thick, lean, again)
		}
	})
}
