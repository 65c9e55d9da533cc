package main

import (
	"fmt"
	"strings"
)

// fuzzTarget is a fuzz function of a package.
type fuzzTarget struct{ pkg, name string }

// fuzzTargets lists the fuzz functions of all that reads what people type.
func fuzzTargets(root string) ([]fuzzTarget, error) {
	said, err := goSays(root, nil, "test", "-list", "^Fuzz", "./calc/...", "./wasm")
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

// run fuzzes for a number of calls: at the end of a time the go command now and
// then takes its own stop for a failure (https://go.dev/issue/75804). What is
// found interesting is not made smaller first: that would take most of the time.
func (t fuzzTarget) run(root string, calls int) error {
	return runIn(root, nil, "go", "test", "-run", "^$", "-fuzz", "^"+t.name+"$", "-fuzztime", fmt.Sprintf("%dx", calls),
		"-fuzzminimizetime", "1x", "-parallel", "2", t.pkg)
}
