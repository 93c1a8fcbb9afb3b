package column

import (
	"slices"

	"sawbill/layout"
)

// measure gives the worth of any rectangle of the board as an offcut: credit
// times the board's money per area, times the area without the defects in it.
// It is additive, so the worth of a rectangle is a difference of values of a
// corner function. Corners are rounded to whole values, so that sums telescope;
// the worth of one offcut is off by at most two millionths.
type measure struct {
	rate   float64 // value per square millimetre; 0: offcuts are worth nothing
	xs, ys []layout.Length
	sound  [][]float64 // sound area below xs[i], ys[j], square millimetres
	clean  [][]bool    // cell between xs[i], xs[i+1] and ys[j], ys[j+1] has no defect
}

const mm2 = float64(layout.Millimetre) * float64(layout.Millimetre)

func newMeasure(s *layout.Shop, b *layout.Board) *measure {
	mean := (float64(b.Width) + float64(b.TipWidth)) / 2
	m := &measure{}
	if area := float64(b.Length) * mean / mm2; area > 0 {
		credit := float64(s.OffcutCredit) / float64(layout.CreditUnity)
		m.rate = credit * float64(FromMoney(b.Cost)) / area
	}
	m.xs, m.ys = []layout.Length{0, b.Length}, []layout.Length{0, b.FullWidth()}
	for _, d := range b.Defects {
		m.xs = append(m.xs, d.Rect.X1, d.Rect.X2)
		m.ys = append(m.ys, d.Rect.Y1, d.Rect.Y2)
	}
	m.xs, m.ys = sorted(m.xs), sorted(m.ys)
	m.fill(b.Defects)
	return m
}

func sorted(l []layout.Length) []layout.Length {
	slices.Sort(l)
	return slices.Compact(l)
}

func (m *measure) fill(defects []layout.Defect) {
	m.sound = make([][]float64, len(m.xs))
	m.clean = make([][]bool, len(m.xs))
	for i := range m.sound {
		m.sound[i] = make([]float64, len(m.ys))
		m.clean[i] = make([]bool, len(m.ys))
	}
	for i := range m.xs[1:] {
		for j := range m.ys[1:] {
			cell := layout.Rect{X1: m.xs[i], X2: m.xs[i+1], Y1: m.ys[j], Y2: m.ys[j+1]}
			m.clean[i][j] = !slices.ContainsFunc(defects, func(d layout.Defect) bool { return d.Rect.Overlaps(cell) })
			area := 0.0
			if m.clean[i][j] {
				area = float64(cell.Length()) * float64(cell.Width()) / mm2
			}
			m.sound[i+1][j+1] = m.sound[i][j+1] + m.sound[i+1][j] - m.sound[i][j] + area
		}
	}
}

// corner is the worth of everything between the butt and x, the reference edge
// and y.
func (m *measure) corner(x, y layout.Length) Value {
	if x == 0 || y == 0 {
		return 0
	}
	i, j := m.cell(m.xs, x), m.cell(m.ys, y)
	tx := float64(x-m.xs[i]) / float64(m.xs[i+1]-m.xs[i])
	ty := float64(y-m.ys[j]) / float64(m.ys[j+1]-m.ys[j])
	low := m.sound[i][j] + ty*(m.sound[i][j+1]-m.sound[i][j])
	high := m.sound[i+1][j] + ty*(m.sound[i+1][j+1]-m.sound[i+1][j])
	return Value((low+tx*(high-low))*m.rate + 0.5)
}

// cell is the index of the interval of edges that holds x. There are so few that looking
// at one after the other is quickest.
func (m *measure) cell(edges []layout.Length, x layout.Length) int {
	i := 0
	for i+2 < len(edges) && edges[i+1] < x {
		i++
	}
	return i
}

// worth is the worth of a rectangle.
func (m *measure) worth(x1, x2, y1, y2 layout.Length) Value {
	return m.corner(x2, y2) - m.corner(x1, y2) - m.corner(x2, y1) + m.corner(x1, y1)
}
