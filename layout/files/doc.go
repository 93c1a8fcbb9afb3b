// Package files reads and writes the files of a job: the stock and the bill
// (CSV), the shop (TOML) and the plan (JSON). It is the only place that knows
// these formats; formats are structs of their own, converted by hand from and to
// the types of package layout.
//
// What is wrong in a file is told as layout.Complaints, all of it together, each
// with the file, the line, the column, the text found and what was expected.
package files
