package check

import (
	"errors"
	"fmt"
	"strings"

	"saltbite/build/tool"
)

// fuzzTarget is a fuzz function of a package.
type fuzzTarget struct{ pkg, name string }

// fuzzTargets lists the fuzz functions of all that reads what people type.
func fuzzTargets(root string) ([]fuzzTarget, error) {
	said, err := tool.Go(root, nil, "test", "-list", "^Fuzz", "./calc/...", "./wasm")
	if err != nil {
		return nil, err
	}
	var targets []fuzzTarget
	var names []string
	for _, line := range strings.Split(said, "\n") {
		words := strings.Fields(line)
		switch {
		case strings.HasPrefix(line, "Fuzz"):
			names = append(names, words[0])
		case len(words) >= 2 && words[0] == "ok":
			for _, name := range names {
				targets = append(targets, fuzzTarget{words[1], name})
			}
			names = nil
		}
	}
	return targets, nil
}

// run fuzzes for a number of calls, not for a time: when a time ends, the go command
// sometimes reports its own stop as a failure (https://go.dev/issue/75804).
// Interesting inputs are not minimized, which would take most of the time.
func (t fuzzTarget) run(root string, calls int) error {
	args := append(tool.Gently(), "go", "test", "-run", "^$", "-fuzz", "^"+t.name+"$", "-fuzztime", fmt.Sprintf("%dx", calls),
		"-fuzzminimizetime", "1x", "-parallel", "2", t.pkg)
	return tool.Run(root, nil, args[0], args[1:]...)
}

// Fuzz makes that many calls of the fuzz targets in all.
func Fuzz(root string, calls int) error {
	if calls <= 0 {
		return nil
	}
	targets, err := fuzzTargets(root)
	if err != nil {
		return err
	}
	if len(targets) == 0 {
		return errors.New("there is no fuzz target")
	}
	each := (calls + len(targets) - 1) / len(targets)
	for _, t := range targets {
		if err := t.run(root, each); err != nil {
			return fmt.Errorf("fuzz %s %s: %w", t.pkg, t.name, err)
		}
		fmt.Printf("ok    %d calls of %s %s found nothing\n", each, t.pkg, t.name)
	}
	return nil
}
