package main

import (
	"regexp"
	"strconv"
	"strings"
	"unicode"

	"golang.org/x/text/cases"
	"golang.org/x/text/unicode/norm"

	"sawbill/layout"
)

// fileStems gives every board of the stock the first part of its files' names,
// by mark. A stem is safe on every common disk, and two marks never share one,
// even where case is ignored. It depends on the marks and their order alone, so
// that a drawing keeps its name when it is made again.
func fileStems(stock []layout.Board) map[string]string {
	stems := map[string]string{}
	taken := map[string]bool{}
	for _, b := range stock {
		if _, done := stems[b.Mark]; done {
			continue
		}
		clean := cleanStem(b.Mark)
		stem := clean
		for n := 2; taken[foldStem(stem)]; n++ {
			stem = clean + "~" + strconv.Itoa(n) // no clean stem holds a tilde
		}
		taken[foldStem(stem)] = true
		stems[b.Mark] = stem
	}
	return stems
}

// pageFile is the name of one page of a board's drawing, without a folder: M4.png,
// M4-2.png and so on. A stem that ends like a page number itself gets one on
// the first page too; otherwise M4's second page and the first of a board
// marked M4-2 would be one file.
func pageFile(stem string, page int) string {
	if page == 1 && !regexp.MustCompile(`-[0-9]+$`).MatchString(foldStem(stem)) {
		return stem + ".png"
	}
	return stem + "-" + strconv.Itoa(page) + ".png"
}

// longestStem keeps names, with page number and ending, below the 255 bytes
// that disks allow.
const longestStem = 200

// cleanStem keeps letters, digits, points, dashes and underscores of a mark and
// puts an underscore in place of all else.
func cleanStem(mark string) string {
	stem := strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) || strings.ContainsRune(".-_", r) {
			return r
		}
		return '_'
	}, norm.NFC.String(mark))
	for len(stem) > longestStem {
		runes := []rune(stem)
		stem = string(runes[:len(runes)-1])
	}
	if stem == "" || strings.HasPrefix(stem, ".") || strings.HasSuffix(stem, ".") || reserved(stem) {
		stem = "_" + stem + "_"
	}
	return stem
}

// reserved reports whether some systems keep a name for a device, whatever its
// ending.
func reserved(stem string) bool {
	name, _, _ := strings.Cut(foldStem(stem), ".")
	return regexp.MustCompile(`^(con|prn|aux|nul|com[0-9]|lpt[0-9])$`).MatchString(name)
}

// foldStem is the same for names that a disk may hold for the same.
func foldStem(stem string) string { return cases.Fold().String(norm.NFKC.String(stem)) }
