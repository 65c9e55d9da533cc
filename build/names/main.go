// Command names writes names.go of package field: a constant for each row of
// the two tables, so that a name that is not in them does not compile.
package main

import (
	"fmt"
	"go/format"
	"os"
	"strings"

	"saltbite/calc/field"
)

func main() {
	if err := write("names.go"); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func write(path string) error {
	source, err := names()
	if err != nil {
		return err
	}
	return os.WriteFile(path, source, 0o644)
}

// names returns the text of names.go.
func names() ([]byte, error) {
	var b strings.Builder
	b.WriteString("// Code generated from the tables of fields and answers; DO NOT EDIT.\n\npackage field\n\n")
	b.WriteString("// Names of the fields, in the order of Fields.\nconst (\n")
	for i, f := range field.Fields {
		declare(&b, i, capital(f.Name), "Name")
	}
	b.WriteString(")\n\n")
	b.WriteString("// Names of the answers, in the order of Answers.\nconst (\n")
	for i, a := range field.Answers {
		declare(&b, i, "Answer"+capital(a.Name), "AnswerName")
	}
	b.WriteString(")\n")
	return format.Source([]byte(b.String()))
}

func declare(b *strings.Builder, i int, name, kind string) {
	if i == 0 {
		fmt.Fprintf(b, "\t%s %s = iota\n", name, kind)
		return
	}
	fmt.Fprintf(b, "\t%s\n", name)
}

func capital(name string) string { return strings.ToUpper(name[:1]) + name[1:] }
