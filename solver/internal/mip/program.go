package mip

import (
	"bufio"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"time"
)

// Program is a general solver for integer programs that this machine has.
type Program struct {
	Name string
	args func(model, answer string, seconds int) []string
	read func(line string) (value float64, proven, ok bool)
}

// Programs are those on the path, of the two that the common distributions of
// Linux carry.
func Programs() []Program {
	var found []Program
	for _, p := range []Program{
		{Name: "cbc", args: cbcArgs, read: cbcAnswer},
		{Name: "glpsol", args: glpsolArgs, read: glpsolAnswer},
	} {
		if _, err := exec.LookPath(p.Name); err == nil {
			found = append(found, p)
		}
	}
	return found
}

// Answer is what a program found: Cost is of the best answer, and Proven tells
// whether none is better.
type Answer struct {
	Cost   float64
	Proven bool
}

// Solve lets the program work on a model for at most so long, in whole seconds.
// It is an error when it finds no answer.
func (p Program) Solve(ctx context.Context, m *Model, most time.Duration) (Answer, error) {
	dir, err := os.MkdirTemp("", "mip")
	if err != nil {
		return Answer{}, err
	}
	defer os.RemoveAll(dir)
	model, answer := filepath.Join(dir, "model.lp"), filepath.Join(dir, "answer.txt")
	if err := writeFile(model, m); err != nil {
		return Answer{}, err
	}
	args := p.args(model, answer, max(1, int(most/time.Second)))
	if out, err := exec.CommandContext(ctx, p.Name, args...).CombinedOutput(); err != nil {
		return Answer{}, fmt.Errorf("%s: %w: %s", p.Name, err, out)
	}
	return p.answer(answer)
}

func writeFile(name string, m *Model) error {
	file, err := os.Create(name)
	if err != nil {
		return err
	}
	if err := m.write(file); err != nil {
		file.Close()
		return err
	}
	return file.Close()
}

func (p Program) answer(name string) (Answer, error) {
	file, err := os.Open(name)
	if err != nil {
		return Answer{}, fmt.Errorf("%s: %w", p.Name, err)
	}
	defer file.Close()
	lines := bufio.NewScanner(file)
	for lines.Scan() {
		if value, proven, ok := p.read(lines.Text()); ok {
			return Answer{value, proven}, nil
		}
	}
	return Answer{}, fmt.Errorf("%s: no answer found", p.Name)
}

func cbcArgs(model, answer string, seconds int) []string {
	return []string{model, "sec", strconv.Itoa(seconds), "ratio", "0", "allow", "0", "solve", "solution", answer}
}

// cbcAnswer reads "Optimal - objective value 41.0" or "Stopped on time -
// objective value 42.0".
func cbcAnswer(line string) (float64, bool, bool) {
	status, value, found := strings.Cut(line, " - objective value ")
	v, err := strconv.ParseFloat(strings.TrimSpace(value), 64)
	return v, status == "Optimal", found && err == nil && !strings.HasPrefix(status, "Infeasible")
}

func glpsolArgs(model, answer string, seconds int) []string {
	return []string{"--lp", model, "--tmlim", strconv.Itoa(seconds), "--cuts", "--write", answer}
}

// glpsolAnswer reads "s mip 12 34 o 41": rows, columns, o for proven or f for
// found, value.
func glpsolAnswer(line string) (float64, bool, bool) {
	f := strings.Fields(line)
	if len(f) != 6 || f[0] != "s" || f[1] != "mip" || f[4] != "o" && f[4] != "f" {
		return 0, false, false
	}
	v, err := strconv.ParseFloat(f[5], 64)
	return v, f[4] == "o", err == nil
}
