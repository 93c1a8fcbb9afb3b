package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// house is the top of the source tree, as seen from this package.
const house = "../.."

// rooms says which packages of ours each package may import. A package that is
// not listed may import nothing of ours. "*" stands for any.
func rooms() map[string][]string {
	return map[string][]string{
		"layout":       {},
		"layout/files": {"layout", "layout/steps", "layout/glueup", "layout/quote"},
		"layout/check": {"layout"},
		"layout/steps": {"layout"},
		"layout/quote": {"layout"},
		// The cautions of a cut are the same words wherever they stand.
		"layout/glueup": {"layout", "layout/steps"},
		"solver":        {"layout", "layout/check", "solver/internal/*"},
		"solver/buy":    {"layout", "layout/check", "solver", "solver/internal/*"},
		// What is left of a board that was cut is for the record to say.
		"solver/risk": {"layout", "layout/record", "solver/internal/*"},
		// What a cut costs a person is for the steps to say.
		"solver/internal/snug": {"layout", "layout/check", "layout/steps"},
		// The table measures the solver as a whole, and nothing imports it.
		"solver/internal/table": {"layout", "solver", "solver/internal/*"},
		"render":                {"layout", "layout/steps", "layout/glueup", "layout/quote"},
		"cmd/sawbill":           {"*"},
		"samples":               {},
		"layout/record":         {"layout", "layout/steps", "layout/check"},
		"layout/check/bound":    {"layout", "layout/check"},
	}
}

// The arrows between packages are promises: each one that is missing is
// something that a reader need not look at. Tests may import more, to hold one
// package against another.
func TestImportArrows(t *testing.T) {
	for room, imports := range importsByRoom(t) {
		allowed, listed := rooms()[room]
		if !listed && strings.HasPrefix(room, "solver/internal/") {
			allowed = []string{"layout", "layout/check", "solver/internal/*"}
		}
		for _, imported := range imports {
			if !allows(allowed, imported) {
				t.Errorf("%s imports %s, which is no arrow of the house", room, imported)
			}
		}
	}
}

func allows(allowed []string, imported string) bool {
	return slices.ContainsFunc(allowed, func(pattern string) bool {
		return pattern == "*" || pattern == imported ||
			strings.HasSuffix(pattern, "/*") && strings.HasPrefix(imported, strings.TrimSuffix(pattern, "*"))
	})
}

// A library that one room alone may know is easy to replace. The second room of
// JSON reads published instances for comparison.
func TestLibrariesStayInTheirRoom(t *testing.T) {
	homes := map[string][]string{
		"github.com/gocarina/gocsv":         {"layout/files"},
		"github.com/BurntSushi/toml":        {"layout/files"},
		"encoding/csv":                      {"layout/files"},
		"encoding/json":                     {"layout/files", "solver/internal/published"},
		"github.com/fogleman/gg":            {"render"},
		"github.com/go-pdf/fpdf":            {"render"},
		"github.com/gofrs/flock":            {"cmd/sawbill"},
		"github.com/urfave/cli/v2":          {"cmd/sawbill"},
		"github.com/schollz/progressbar/v3": {"cmd/sawbill"},
	}
	eachGoFile(t, func(file, room string, imports []string) {
		for _, imported := range imports {
			if home, ok := homes[imported]; ok && !slices.Contains(home, room) {
				t.Errorf("%s imports %s, which stays in %s", file, imported, strings.Join(home, ", "))
			}
		}
	})
}

// importsByRoom lists what of ours each package imports, without its tests.
func importsByRoom(t *testing.T) map[string][]string {
	t.Helper()
	found := map[string][]string{}
	eachGoFile(t, func(_, room string, imports []string) {
		for _, imported := range imports {
			if ours, ok := strings.CutPrefix(imported, "sawbill/"); ok {
				found[room] = append(found[room], ours)
			}
		}
	})
	return found
}

// eachGoFile visits all Go files but tests with the folder that they are in and
// what they import.
func eachGoFile(t *testing.T, visit func(file, room string, imports []string)) {
	t.Helper()
	err := filepath.WalkDir(house, func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(p, ".go") || strings.HasSuffix(p, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), p, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		var imports []string
		for _, spec := range file.Imports {
			name, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				return err
			}
			imports = append(imports, name)
		}
		inHouse, err := filepath.Rel(house, p)
		if err != nil {
			return err
		}
		visit(filepath.ToSlash(inHouse), path.Dir(filepath.ToSlash(inHouse)), imports)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

func TestTopLevel(t *testing.T) {
	want := []string{"DEVELOPERS.md", "README.md", "cmd", "go.mod", "go.sum", "layout", "render", "samples", "solver", "testdata"}
	var got []string
	for _, file := range sourceFiles(t) {
		top, _, _ := strings.Cut(file, "/")
		if !strings.HasPrefix(top, ".") {
			got = append(got, top)
		}
	}
	slices.Sort(got)
	if got = slices.Compact(got); !slices.Equal(got, want) {
		t.Errorf("the top level holds %q, want %q", got, want)
	}
}

// DEVELOPERS.md names files and folders in code marks; each of them with a
// slash or a known ending must exist.
func TestDevelopersNamesExist(t *testing.T) {
	text := readHouse(t, "DEVELOPERS.md")
	named := regexp.MustCompile("`([A-Za-z0-9_.]+(?:/[A-Za-z0-9_.]+)*/?)`").FindAllStringSubmatch(text, -1)
	checked := 0
	for _, m := range named {
		name := m[1]
		if !strings.Contains(name, "/") && !slices.Contains([]string{".go", ".md", ".mod"}, path.Ext(name)) {
			continue
		}
		checked++
		if _, err := os.Stat(filepath.Join(house, filepath.FromSlash(name))); err != nil {
			t.Errorf("DEVELOPERS.md names %q: %v", name, err)
		}
	}
	if checked < 10 {
		t.Errorf("DEVELOPERS.md names %d paths; has its way of naming them changed?", checked)
	}
}

// What is true of one machine alone has no place in the source.
func TestNoMachinePaths(t *testing.T) {
	forbidden := regexp.MustCompile(`(^|[^a-zA-Z.])/(work|root|farm|home|tmp)/[a-zA-Z]`)
	for _, file := range sourceFiles(t) {
		if strings.HasSuffix(file, ".sum") || strings.HasSuffix(file, ".png") {
			continue
		}
		for i, line := range strings.Split(readHouse(t, file), "\n") {
			if forbidden.MatchString(line) {
				t.Errorf("%s:%d holds a path of some machine: %s", file, i+1, strings.TrimSpace(line))
			}
		}
	}
}

func readHouse(t *testing.T, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(house, filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// sourceFiles are the files that git holds, with slashes; where there is no
// git, as in an unpacked archive, all files.
func sourceFiles(t *testing.T) []string {
	t.Helper()
	listing := exec.Command("git", "ls-files", "-z")
	listing.Dir = house
	if out, err := listing.Output(); err == nil && len(out) > 0 {
		return strings.Split(strings.TrimRight(string(out), "\x00"), "\x00")
	}
	var files []string
	err := fs.WalkDir(os.DirFS(house), ".", func(p string, d fs.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			files = append(files, p)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}
