// Command build makes the site, serves it, tests it and measures it. Everything
// it does is Go; what must be a browser or Node is started from here.
//
//	go run ./build                      write dist/
//	go run ./build serve [-addr a]      write dist/, serve it, and again whenever a source changes
//	go run ./build test [-setup] [-run] run every check there is
//	go run ./build bench [-fuzz n]      measure size and speed against their limits
//
// It is run from anywhere inside the repository, and reads and writes nothing
// outside it but temporary folders and the Go toolchain's own caches.
package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"time"
)

const usage = `usage: go run ./build [command]

  (none)   write the finished site to dist/
  serve    write dist/ and serve it on this machine, again whenever a source changes
             -addr host:port   where (127.0.0.1:8080, or a free port if that is taken)
  test     run every check: format, vet, Go tests natively and as WebAssembly in Node,
           fuzzing, the types of the JavaScript, sizes, the page in three browser engines
             -setup            first install what is missing; a check that can't run then fails
             -run pattern      only checks whose name, or Go tests whose name, match
  bench    measure size, speed and latency in one run; fails past a limit
             -fuzz n           also n calls of the fuzz targets in all
`

// command is a thing to do in the repository at root.
type command func(root string, args []string) error

var commands = map[string]command{"": write, "serve": serve, "test": test, "bench": bench}

// errFailed ends the run after what failed has been printed.
var errFailed = errors.New("")

func main() {
	flag.Usage = func() { fmt.Print(usage) }
	flag.Parse()
	run, known := commands[flag.Arg(0)]
	if !known {
		fmt.Fprintf(os.Stderr, "build: no command %q\n\n%s", flag.Arg(0), usage)
		os.Exit(2)
	}
	root, err := repository()
	if err == nil {
		err = run(root, rest(flag.Args()))
	}
	if err != nil {
		if err != errFailed {
			fmt.Fprintln(os.Stderr, "build:", err)
		}
		os.Exit(1)
	}
}

func rest(args []string) []string {
	if len(args) == 0 {
		return nil
	}
	return args[1:]
}

// flags parses a command's own flags, of which -h prints the whole usage.
func flags(name string, args []string, define func(*flag.FlagSet)) error {
	set := flag.NewFlagSet(name, flag.ExitOnError)
	set.Usage = func() { fmt.Print(usage) }
	define(set)
	if err := set.Parse(args); err != nil {
		return err
	}
	if set.NArg() > 0 {
		return fmt.Errorf("%s takes no %q", name, set.Arg(0))
	}
	return nil
}

// write makes the site and says how large its files are.
func write(root string, args []string) error {
	if err := flags("write", args, func(*flag.FlagSet) {}); err != nil {
		return err
	}
	start := time.Now()
	site, err := publish(root)
	if err != nil {
		return err
	}
	if err := site.writeTo(filepath.Join(root, "dist")); err != nil {
		return err
	}
	if err := refreshReadme(root); err != nil {
		return err
	}
	for _, name := range site.names() {
		fmt.Printf("%9d  dist/%s\n", len(site[name]), name)
	}
	fmt.Printf("made in %.1f s\n", time.Since(start).Seconds())
	return nil
}

// repository finds the folder of this module's go.mod, here or above.
func repository() (string, error) {
	dir, err := os.Getwd()
	if err != nil {
		return "", err
	}
	for {
		mod, err := os.ReadFile(filepath.Join(dir, "go.mod"))
		if err == nil && bytes.HasPrefix(mod, []byte("module saltbite\n")) {
			return dir, nil
		}
		parent := filepath.Dir(dir)
		if parent == dir {
			return "", errors.New("this is run inside the repository, and there is no go.mod of saltbite here or above")
		}
		dir = parent
	}
}
