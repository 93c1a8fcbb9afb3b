package files

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"sawbill/layout"
)

// examples is the folder of the three jobs that have a valid plan.
const examples = "../../testdata/examples"

// everyPlan lists the valid plans and the broken ones.
func everyPlan(t testing.TB) []string {
	t.Helper()
	good, err := filepath.Glob(examples + "/*/plan.json")
	if err != nil {
		t.Fatal(err)
	}
	broken, err := filepath.Glob(examples + "/*/broken/*-*.json")
	if err != nil {
		t.Fatal(err)
	}
	if len(good) != 3 || len(broken) != 60 {
		t.Fatalf("found %d plans and %d broken ones, want 3 and 60", len(good), len(broken))
	}
	return append(good, broken...)
}

func readPlan(t testing.TB, path string) *layout.Plan {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	plan, err := ReadPlan(f, filepath.Base(path))
	if err != nil {
		t.Fatal(err)
	}
	return plan
}

// Broken plans are broken by the rules of the wood, not as files: all are read,
// and written back the same.
func TestPlanRoundTrip(t *testing.T) {
	for _, path := range everyPlan(t) {
		first := written(t, readPlan(t, path))
		again, err := ReadPlan(bytes.NewReader(first), "again")
		if err != nil {
			t.Fatalf("%s: %v", path, err)
		}
		if !bytes.Equal(first, written(t, again)) {
			t.Errorf("%s: written twice, the bytes differ", path)
		}
	}
}

func written(t testing.TB, p *layout.Plan) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := WritePlan(&out, p); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// Nothing is lost of a plan in which every field holds something, those of
// later work included.
func TestEveryFieldOfAPlanIsKept(t *testing.T) {
	var plan layout.Plan
	fill(reflect.ValueOf(&plan).Elem(), new(int), 0)
	plan.Problem.Shop.Fraction = 16
	plan.Problem.Bill[0].From = []string{plan.Problem.Stock[1].Mark}
	file, err := decodePlan1(written(t, &plan))
	if err != nil {
		t.Fatal(err)
	}
	again, err := fromPlan1(file)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(&plan, again, cmpopts.EquateEmpty()); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

// fill gives every field a value of its own.
func fill(v reflect.Value, n *int, depth int) {
	*n++
	switch v.Kind() {
	case reflect.Uint8: // a word: the second is not what a missing key means
		v.SetUint(1)
	case reflect.Int, reflect.Int64:
		v.SetInt(int64(*n))
	case reflect.Float64:
		v.SetFloat(float64(*n) / 7)
	case reflect.Bool:
		v.SetBool(true)
	case reflect.String:
		v.SetString(fmt.Sprintf("word <%d>", *n))
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		fill(v.Elem(), n, depth+1)
	case reflect.Slice:
		if depth < 8 {
			v.Set(reflect.MakeSlice(v.Type(), 2, 2))
			fill(v.Index(0), n, depth+1)
			fill(v.Index(1), n, depth+1)
		}
	case reflect.Map:
		key, value := reflect.New(v.Type().Key()).Elem(), reflect.New(v.Type().Elem()).Elem()
		fill(key, n, depth+1)
		fill(value, n, depth+1)
		v.Set(reflect.MakeMap(v.Type()))
		v.SetMapIndex(key, value)
	case reflect.Struct:
		if v.Type() == reflect.TypeFor[time.Time]() {
			v.Set(reflect.ValueOf(time.Date(2026, 1, 31, 10, 0, *n, 0, time.UTC)))
			return
		}
		for i := range v.NumField() {
			fill(v.Field(i), n, depth+1)
		}
	}
}
