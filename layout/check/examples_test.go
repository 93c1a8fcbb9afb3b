package check

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"sawbill/layout"
	"sawbill/layout/files"
)

const examples = "../../testdata/examples"

func exampleJobs() []string { return []string{"ash", "beech-mm", "elm-and-beech"} }

func readExample(t *testing.T, path ...string) *layout.Plan {
	t.Helper()
	name := filepath.Join(append([]string{examples}, path...)...)
	f, err := os.Open(name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	p, err := files.ReadPlan(f, name)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// The accounts of the examples count kerf, edges and defects as scrap, which the
// checker lets pass.
func TestExamplesPass(t *testing.T) {
	for _, job := range exampleJobs() {
		t.Run(job, func(t *testing.T) {
			for _, v := range Plan(readExample(t, job, "plan.json")) {
				t.Error(v)
			}
		})
	}
}

// Each example that is broken in one way breaks the rule that it is listed
// under.
func TestBrokenExamplesAreRefused(t *testing.T) {
	for _, job := range exampleJobs() {
		for file, rule := range brokenRules(t, job) {
			t.Run(job+"/"+file, func(t *testing.T) {
				wantViolation(t, readExample(t, job, "broken", file), rule, "")
			})
		}
	}
}

// brokenRules maps the broken plans of a job to the rules that they break.
func brokenRules(t *testing.T, job string) map[string]string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(examples, job, "broken", "rules.json"))
	if err != nil {
		t.Fatal(err)
	}
	var list map[string]struct{ Rule string }
	if err := json.Unmarshal(data, &list); err != nil {
		t.Fatal(err)
	}
	if len(list) != 20 {
		t.Fatalf("%s lists %d broken plans, want 20", job, len(list))
	}
	rules := map[string]string{}
	for file, entry := range list {
		rules[file] = entry.Rule
	}
	return rules
}

func TestExamplesReassembled(t *testing.T) {
	for _, job := range exampleJobs() {
		t.Run(job, func(t *testing.T) { checkReassembled(t, readExample(t, job, "plan.json")) })
	}
}
