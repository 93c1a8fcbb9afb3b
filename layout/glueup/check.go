package glueup

import (
	"fmt"
	"strconv"
	"strings"

	"sawbill/layout"
)

// The most that one design may hold; more is a slip of the pen.
const (
	MaxSpare  = 1000
	MaxCells  = 400  // along a row, and rows in a face
	MaxPieces = 5000 // blocks, prism slices or slanted slices
	MaxWoods  = 8    // as many as can be told apart on paper
	maxPoints = 30   // percentage points of moisture
)

// checker collects what is wrong with a design.
type checker struct {
	design *Design
	found  layout.Complaints
}

func (c *checker) fault(key, found, want string) {
	c.found = append(c.found, layout.Complaint{
		Table: layout.DesignTable, Row: layout.WholeTable, Column: key, Found: found, Want: want,
	})
}

func (c *checker) all() {
	d := c.design
	c.size("thickness", d.Thickness)
	c.allowance("trim", d.Trim)
	c.allowance("flatten", d.Flatten)
	c.allowance("panel_flatten", d.PanelFlatten)
	c.spare("spare_slices", d.SpareSlices)
	c.spare("spare_strips", d.SpareStrips)
	if d.Moisture < 0 || d.Moisture > maxPoints*10 {
		c.fault("moisture_change", d.Moisture.String(), fmt.Sprintf("want percentage points from 0 to %d", maxPoints))
	}
	c.woods()
	if d.Frame != nil {
		c.size("frame.width", d.Frame.Width)
		c.letter("frame.wood", d.Frame.Wood)
	}
	if d.Pattern == nil {
		c.fault("pattern", "", "is missing")
		return
	}
	d.Pattern.check(c)
}

// face checks the sizes of a face that is not made of cells.
func (c *checker) face() bool {
	return c.size("length", c.design.Length) && c.size("width", c.design.Width)
}

// noFace complains of sizes that nobody would honour.
func (c *checker) noFace(why string) {
	for _, s := range []struct {
		key string
		l   layout.Length
	}{{"length", c.design.Length}, {"width", c.design.Width}} {
		if s.l != 0 {
			c.fault(s.key, s.l.Format(c.design.Units, 64), why)
		}
	}
}

func (c *checker) woods() {
	if len(c.design.Woods) == 0 {
		c.fault("woods", "", `is missing: want a table [woods] with a letter for each species, such as a = "ash"`)
	}
	if n := len(c.design.Woods); n > MaxWoods {
		c.fault("woods", strconv.Itoa(n)+" species", fmt.Sprintf("want at most %d", MaxWoods))
	}
	for _, letter := range c.design.Letters() {
		if len([]rune(letter)) != 1 {
			c.fault("woods."+letter, letter, "want one letter for a species")
		}
		if strings.TrimSpace(c.design.Woods[letter]) == "" {
			c.fault("woods."+letter, "", "is empty: want a species")
		}
	}
}

// letter checks that a letter stands for a species.
func (c *checker) letter(key, letter string) bool {
	if _, known := c.design.Woods[letter]; known {
		return true
	}
	c.fault(key, letter, "want a letter of [woods]: "+strings.Join(c.design.Letters(), ", "))
	return false
}

// letters checks a row of letters.
func (c *checker) letters(key, row string) bool {
	if row == "" {
		c.fault(key, "", "is empty: want letters of [woods]")
		return false
	}
	seen := map[rune]bool{}
	good := true
	for _, r := range row {
		if !seen[r] {
			good = c.letter(key, string(r)) && good
		}
		seen[r] = true
	}
	return good
}

func (c *checker) size(key string, l layout.Length) bool {
	if 0 < l && l <= layout.MaxLength {
		return true
	}
	found, want := l.Format(c.design.Units, 64), "want a length greater than 0 and of at most 30 m"
	if l == 0 {
		found, want = "", "is missing or 0: "+want
	}
	c.fault(key, found, want)
	return false
}

func (c *checker) sizes(key string, list []layout.Length) bool {
	good := len(list) > 0
	if !good {
		c.fault(key, "", "is missing: want a length, or a list of them")
	}
	for _, l := range list {
		good = c.size(key, l) && good
	}
	return good
}

func (c *checker) allowance(key string, l layout.Length) {
	if l < 0 || l > layout.Metre {
		c.fault(key, l.Format(c.design.Units, 64), "want a length from 0 to 1 m")
	}
}

func (c *checker) spare(key string, n int) {
	if n < 0 || n > MaxSpare {
		c.fault(key, strconv.Itoa(n), fmt.Sprintf("want a whole number from 0 to %d", MaxSpare))
	}
}

// pieces refuses what would need absurdly many pieces: a face before its trim over
// the square of a size, or one of its sides over the size.
func (c *checker) pieces(key string, one layout.Length) {
	f := c.design.sawn()
	long, wide := float64(f.Length())/float64(one), float64(f.Width())/float64(one)
	if long*wide > MaxPieces || max(long, wide) > MaxPieces {
		c.fault(key, one.Format(c.design.Units, 64), fmt.Sprintf("is so small that the face would need more than %d pieces", MaxPieces))
	}
}

// String is the change with as many decimals as it needs.
func (m Moisture) String() string { return strconv.FormatFloat(float64(m)/10, 'f', -1, 64) }
