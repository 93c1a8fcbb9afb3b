package layout

import (
	"fmt"
	"strings"
)

// Table names one of the files that make a job.
type Table uint8

// The tables, in the order in which their complaints are told.
const (
	ShopTable Table = iota
	StockTable
	BillTable
	DesignTable // of a glue-up, before there is a bill
)

// String gives "shop", "stock", "bill" or "design".
func (t Table) String() string { return [...]string{"shop", "stock", "bill", "design"}[t] }

// Severity says whether a complaint stops the work.
type Severity uint8

// The two severities.
const (
	Fault   Severity = iota // the job cannot be planned
	Warning                 // worth a second look; the job can be planned
)

// WholeTable is the Row of a complaint that is about no row in particular.
const WholeTable = -1

// Complaint is one thing that is wrong, or doubtful, with what a person wrote.
type Complaint struct {
	Table    Table
	Row      int    // index in the slice of boards or parts, or WholeTable
	Column   string // column of the table or key of the shop; may be empty
	Found    string // the text found; may be empty
	Want     string // what was expected, such as `want a length`, or what is wrong
	Severity Severity
	// File and Line, from 1, are what people are told instead of table and row.
	// The files package fills them in; a Line of 0 is the file as a whole.
	File string
	Line int
}

// String is one line for people: stock.csv:7: width: found "x", want a length.
func (c Complaint) String() string {
	var b strings.Builder
	b.WriteString(c.where() + ": ")
	if c.Column != "" {
		b.WriteString(c.Column + ": ")
	}
	if c.Found != "" {
		fmt.Fprintf(&b, "found %q, ", c.Found)
	}
	b.WriteString(c.Want)
	return b.String()
}

func (c Complaint) where() string {
	switch {
	case c.File != "" && c.Line > 0:
		return fmt.Sprintf("%s:%d", c.File, c.Line)
	case c.File != "":
		return c.File
	case c.Row == WholeTable:
		return c.Table.String()
	}
	return fmt.Sprintf("%s row %d", c.Table, c.Row+1)
}

// Complaints is all that is wrong or doubtful with a job. As an error it tells
// of the faults only.
type Complaints []Complaint

// maxTold is how many complaints are told one by one.
const maxTold = 20

// Error tells the first twenty faults, one a line, and counts the rest.
func (cs Complaints) Error() string {
	var lines []string
	for i, c := range cs.Faults() {
		if i == maxTold {
			lines = append(lines, fmt.Sprintf("and %d more", len(cs.Faults())-maxTold))
			break
		}
		lines = append(lines, c.String())
	}
	return strings.Join(lines, "\n")
}

// Err is cs as an error, or nil when nothing in it is a fault.
func (cs Complaints) Err() error {
	if len(cs.Faults()) == 0 {
		return nil
	}
	return cs
}

// Faults are the complaints that stop the work.
func (cs Complaints) Faults() Complaints { return cs.only(Fault) }

// Warnings are the complaints that do not.
func (cs Complaints) Warnings() Complaints { return cs.only(Warning) }

func (cs Complaints) only(s Severity) Complaints {
	var some Complaints
	for _, c := range cs {
		if c.Severity == s {
			some = append(some, c)
		}
	}
	return some
}

// about collects complaints about one row.
type about struct {
	to    *Complaints
	table Table
	row   int
}

func (a about) fault(column, found, want string) { a.add(column, found, want, Fault) }

func (a about) warn(column, found, want string) { a.add(column, found, want, Warning) }

func (a about) add(column, found, want string, s Severity) {
	*a.to = append(*a.to, Complaint{
		Table: a.table, Row: a.row, Column: column, Found: found, Want: want, Severity: s,
	})
}
