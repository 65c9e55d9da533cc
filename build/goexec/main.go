// Command goexec runs a test that was compiled to WebAssembly in Node:
//
//	GOOS=js GOARCH=wasm go test -exec=goexec ./calc/...
//
// It calls the toolchain's own runner with an environment of the few variables
// that tests read. The toolchain's glue gives arguments and environment twelve
// kilobytes in all, and a machine's whole environment may not fit.
package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// stack is V8's stack in kilobytes, as the toolchain's own script sets it:
// the usual one is too small for some tests.
const stack = "--stack-size=8192"

func main() {
	if len(os.Args) < 2 {
		fmt.Fprintln(os.Stderr, "usage: goexec program.wasm [arguments]")
		os.Exit(2)
	}
	err := run(os.Args[1:])
	var exit *exec.ExitError
	switch {
	case errors.As(err, &exit):
		os.Exit(exit.ExitCode())
	case err != nil:
		fmt.Fprintln(os.Stderr, "goexec:", err)
		os.Exit(1)
	}
}

func run(args []string) error {
	goroot, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return fmt.Errorf("ask where the toolchain is: %w", err)
	}
	runner := filepath.Join(strings.TrimSpace(string(goroot)), "lib", "wasm", "wasm_exec_node.js")
	cmd := exec.Command("node", append([]string{stack, runner}, args...)...)
	cmd.Stdin, cmd.Stdout, cmd.Stderr = os.Stdin, os.Stdout, os.Stderr
	cmd.Env = environment(os.Environ())
	return cmd.Run()
}

// environment keeps what Node and tests need.
func environment(all []string) []string {
	var kept []string
	for _, setting := range all {
		name, _, _ := strings.Cut(setting, "=")
		switch {
		case name == "PATH", name == "HOME", name == "TMPDIR", name == "TZ", strings.HasPrefix(name, "SALTBITE_"):
			kept = append(kept, setting)
		}
	}
	return kept
}
