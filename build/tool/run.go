// Package tool runs the programs that the build needs: the go command, Node, npm
// and the system's package manager.
package tool

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// ForWasm is the environment in which the go command builds for the browser.
var ForWasm = []string{"GOOS=js", "GOARCH=wasm"}

// Run runs a command in a folder, with more in its environment; what it prints is
// part of its error.
func Run(dir string, env []string, name string, args ...string) error {
	cmd := exec.Command(name, args...)
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), env...)
	if output, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("%w\n%s", err, output)
	}
	return nil
}

// Gently begins a command that takes only the time which others leave: of the lowest
// priority, where the system has such a thing.
func Gently() []string {
	if nice, err := exec.LookPath("nice"); err == nil {
		return []string{nice, "-n", "19"}
	}
	return nil
}

// Go runs the go command in root, with more in its environment, and returns what
// it prints.
func Go(root string, env []string, args ...string) (string, error) {
	cmd := exec.Command("go", args...)
	cmd.Dir = root
	cmd.Env = append(os.Environ(), env...)
	out, err := cmd.Output()
	if err != nil {
		var exit *exec.ExitError
		if errors.As(err, &exit) {
			return "", fmt.Errorf("go %s: %w\n%s", strings.Join(args, " "), err, exit.Stderr)
		}
		return "", fmt.Errorf("go %s: %w", strings.Join(args, " "), err)
	}
	return string(out), nil
}

// NodeRunner builds the program that runs Go tests in Node, for the -exec flag of
// go test. remove removes it.
func NodeRunner(root string) (path string, remove func(), err error) {
	dir, err := os.MkdirTemp("", "saltbite-goexec-")
	if err != nil {
		return "", nil, err
	}
	remove = func() { os.RemoveAll(dir) }
	path = filepath.Join(dir, "goexec")
	if err := Run(root, nil, "go", "build", "-o", path, "./build/goexec"); err != nil {
		remove()
		return "", nil, err
	}
	return path, remove, nil
}

// InstallScripts installs the npm packages that only tests use, unless the folder
// holds them as the lock file names them.
func InstallScripts(root string) error {
	site := filepath.Join(root, "site")
	lock, err := os.Stat(filepath.Join(site, "package-lock.json"))
	if err != nil {
		return err
	}
	if here, err := os.Stat(filepath.Join(site, "node_modules", ".package-lock.json")); err == nil && here.ModTime().After(lock.ModTime()) {
		return nil
	}
	return Run(site, nil, "npm", "ci", "--no-audit", "--no-fund")
}
