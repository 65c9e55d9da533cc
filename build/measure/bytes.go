package measure

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"slices"
	"strings"

	"saltbite/build/site"
	"saltbite/build/tool"
)

// share is how many bytes of a program come from a package.
type share struct {
	pkg   string
	bytes int
}

// bytesByPackage builds a program with its symbols and adds up the code of each
// package, largest first; "data" is its constants and tables, which a
// WebAssembly file does not separate.
func bytesByPackage(root, pkg string) ([]share, error) {
	file, err := site.ProgramWithSymbols(root, pkg)
	if err != nil {
		return nil, err
	}
	list, err := tool.Go(root, tool.ForWasm, "list", "-deps", pkg)
	if err != nil {
		return nil, err
	}
	return sharesOf(file, append(strings.Fields(list), "main"))
}

// sharesOf reads a WebAssembly file: the sizes of its functions in the code
// section, their names in the custom section "name"
// (WebAssembly Core Specification 2.0, 5.5 and 7.4.1).
func sharesOf(file []byte, packages []string) (shares []share, err error) {
	defer func() {
		if recover() != nil {
			shares, err = nil, errors.New("a WebAssembly file ends before its sections do")
		}
	}()
	if !bytes.HasPrefix(file, []byte("\x00asm")) {
		return nil, errors.New("no WebAssembly file")
	}
	const importSection, codeSection, dataSection = 2, 10, 11
	var sizes []int
	var names map[int]string
	imported, data := 0, 0
	for rest := wasmReader(file[8:]); len(rest) > 0; {
		id := rest.take(1)[0]
		body := wasmReader(rest.take(rest.number()))
		switch id {
		case importSection:
			imported = body.number() // Go imports only functions
		case codeSection:
			for range body.number() {
				size := body.number()
				body.take(size)
				sizes = append(sizes, size)
			}
		case dataSection:
			data = len(body)
		case 0:
			if string(body.take(body.number())) == "name" {
				names = functionNames(body)
			}
		}
	}
	sums := map[string]int{"data": data}
	written := asLinked(packages)
	for i, size := range sizes {
		sums[packageOf(names[imported+i], written)] += size
	}
	for pkg, sum := range sums {
		shares = append(shares, share{pkg, sum})
	}
	slices.SortFunc(shares, func(a, b share) int {
		if a.bytes != b.bytes {
			return b.bytes - a.bytes
		}
		return strings.Compare(a.pkg, b.pkg)
	})
	return shares, nil
}

// wasmReader is what is still to be read; it panics at the end.
type wasmReader []byte

func (r *wasmReader) take(n int) []byte {
	taken := (*r)[:n]
	*r = (*r)[n:]
	return taken
}

// number reads an unsigned LEB128 number, which is written as Go's varints are.
func (r *wasmReader) number() int {
	n, length := binary.Uvarint(*r)
	if length <= 0 {
		panic("no number")
	}
	*r = (*r)[length:]
	return int(n)
}

// functionNames reads the part of the section "name" that is about functions.
func functionNames(section wasmReader) map[int]string {
	const functions = 1
	names := map[int]string{}
	for len(section) > 0 {
		id := section.take(1)[0]
		body := wasmReader(section.take(section.number()))
		if id != functions {
			continue
		}
		for range body.number() {
			index := body.number()
			names[index] = string(body.take(body.number()))
		}
	}
	return names
}

// asLinked are packages by their paths as the linker writes them in a
// WebAssembly file: everything but letters, digits and points becomes "_".
func asLinked(packages []string) map[string]string {
	written := map[string]string{}
	for _, path := range packages {
		written[strings.Map(func(r rune) rune {
			if r == '.' || r == '_' || r >= '0' && r <= '9' || r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' {
				return r
			}
			return '_'
		}, path)] = path
	}
	return written
}

// packageOf is the package of a function: the longest that its name starts with.
func packageOf(name string, written map[string]string) string {
	for end := len(name); end >= 0; end = strings.LastIndexByte(name[:end], '.') {
		if path, known := written[name[:end]]; known {
			return path
		}
	}
	if strings.HasPrefix(name, "type_.") {
		return "equality and hashes of types"
	}
	return "start and glue"
}

// topShares is the head of the list, as lines.
func topShares(shares []share, n int) string {
	var b strings.Builder
	for i, s := range shares {
		if i < n || strings.HasPrefix(s.pkg, "saltbite/") || s.pkg == "main" {
			fmt.Fprintf(&b, "%9d  %s\n", s.bytes, s.pkg)
		}
	}
	return b.String()
}
