package steps

import (
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"io"

	"sawbill/layout"
)

// CheckWord is a short word that stands for a plan on paper: two sheets with the
// same word come from the same plan, whenever it was made. It depends on the
// job, the revision, the shop's cuts, the boards that are cut and how. Two
// different plans share a word once in about thirty million.
func CheckWord(p *layout.Plan) string {
	h := sha256.New()
	fmt.Fprintf(h, "%q %d %v\n", p.Job, p.Revision, shopCuts(p.Problem.Shop))
	for _, bp := range p.Boards {
		if b := p.Problem.Board(bp.Board); b != nil {
			fmt.Fprintf(h, "%q %q %d %d %d %d %d %d %d %d %d %d\n", b.Mark, b.Species,
				b.Thickness, b.Width, b.TipWidth, b.Length, b.Edges, b.Faces, b.Bow, b.Crook, b.Cup, b.Twist)
		}
		writeTree(h, bp.Root)
	}
	for _, m := range p.Missing {
		fmt.Fprintf(h, "%q %d\n", m.Part, m.Quantity)
	}
	return syllables(binary.BigEndian.Uint64(h.Sum(nil)))
}

// shopCuts are the measures of the shop that change a drawing.
func shopCuts(s *layout.Shop) []layout.Length {
	return []layout.Length{
		s.RipKerf, s.CrosscutKerf, s.RoughRipKerf, s.ResawKerf,
		s.EdgeJoint, s.EndSquare, s.EndTrim, s.FaceSkim,
		s.LengthAllowance, s.WidthAllowance, s.ThicknessAllowance,
	}
}

func writeTree(w io.Writer, n *layout.Node) {
	fmt.Fprintf(w, "(%v %d %t %d %d %q %q %d %t %d %d %q", n.Rect, n.Cut, n.Trued, n.Thickness,
		n.Lean, n.Part, n.ID, n.Show, n.OnEdge, n.Layers, n.Slices, n.Offcut)
	for _, c := range n.Children {
		writeTree(w, c)
	}
	fmt.Fprintln(w, ")")
}

// syllables spells a number as two groups of two open syllables: toma-bilu.
func syllables(n uint64) string {
	const consonants, vowels = "bdfghjklmnprstv", "aeiou"
	word := make([]byte, 0, 9)
	for i := range 4 {
		if i == 2 {
			word = append(word, '-')
		}
		word = append(word, consonants[n%uint64(len(consonants))])
		n /= uint64(len(consonants))
		word = append(word, vowels[n%uint64(len(vowels))])
		n /= uint64(len(vowels))
	}
	return string(word)
}
