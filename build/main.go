// Command build makes the site, serves it, tests it and measures it. Everything
// it does is written in Go; browsers and Node are started from here.
//
//	go run ./build                      write dist/
//	go run ./build serve [-addr a]      write dist/, serve it, and again whenever a source changes
//	go run ./build test [-setup] [-run] run every check there is
//	go run ./build bench [-fuzz n]      measure size and speed against their limits
//	go run ./build mutate               change the calculator in single places; say what no test notices
//	go run ./build pictures             photograph the page for README.md
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

	"saltbite/build/check"
	"saltbite/build/measure"
	"saltbite/build/pictures"
	"saltbite/build/site"
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
             -run pattern      only size, ratio, node, page, cold or lighthouse, as they match
             -fuzz n           also n calls of the fuzz targets in all
  mutate   change a package in one place at a time and print the changes that its tests let pass
             -package folder   which (calc/bite)
             -n count          how many places, by chance (20; 0 is all of them)
             -seed s           of that chance (1)
  pictures photograph the page for README.md: site/tablet.png, dark.png, phone.png, card.png
`

// command is a thing to do in the repository at root.
type command func(root string, args []string) error

var commands = map[string]command{"": write, "serve": serve, "test": test, "bench": bench, "mutate": mutate, "pictures": photograph}

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
		if err != check.ErrFailed {
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
	made, err := published(root)
	if err != nil {
		return err
	}
	if err := site.RefreshReadme(root); err != nil {
		return err
	}
	for _, name := range made.Names() {
		fmt.Printf("%9d  dist/%s\n", len(made[name]), name)
	}
	fmt.Printf("made in %.1f s\n", time.Since(start).Seconds())
	return nil
}

// published is the site, which stands in dist/ as well.
func published(root string) (site.Files, error) {
	made, err := site.Publish(root)
	if err != nil {
		return nil, err
	}
	return made, made.WriteTo(filepath.Join(root, "dist"))
}

// test runs every check there is.
func test(root string, args []string) error {
	var o check.Options
	err := flags("test", args, func(set *flag.FlagSet) {
		set.BoolVar(&o.Setup, "setup", false, "")
		set.StringVar(&o.Pattern, "run", "", "")
	})
	if err != nil {
		return err
	}
	return check.Run(root, o)
}

// bench measures the site, and fuzzes for as many calls as it is told.
func bench(root string, args []string) error {
	var calls int
	var pattern string
	err := flags("bench", args, func(set *flag.FlagSet) {
		set.IntVar(&calls, "fuzz", 0, "")
		set.StringVar(&pattern, "run", "", "")
	})
	if err != nil {
		return err
	}
	made, err := published(root)
	if err != nil {
		return err
	}
	return errors.Join(measure.Bench(root, made, pattern), check.Fuzz(root, calls))
}

// mutate tries how much the tests of a package notice.
func mutate(root string, args []string) error {
	var pkg string
	var n int
	var seed uint64
	err := flags("mutate", args, func(set *flag.FlagSet) {
		set.StringVar(&pkg, "package", "calc/bite", "")
		set.IntVar(&n, "n", 20, "")
		set.Uint64Var(&seed, "seed", 1, "")
	})
	if err != nil {
		return err
	}
	return measure.Mutate(root, pkg, n, seed)
}

// photograph takes the pictures of README.md.
func photograph(root string, args []string) error {
	if err := flags("pictures", args, func(*flag.FlagSet) {}); err != nil {
		return err
	}
	made, err := published(root)
	if err != nil {
		return err
	}
	return pictures.Take(root, made)
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
