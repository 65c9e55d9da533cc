package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"saltbite/calc/field"
	"saltbite/site/words"
)

// Marks in README.md between which the table of fields stands.
const (
	tableFrom = "<!-- fields -->\n"
	tableTo   = "<!-- /fields -->\n"
)

// refreshReadme writes the table of fields into README.md.
func refreshReadme(root string) error {
	path := filepath.Join(root, "README.md")
	readme, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	fresh, err := withTable(readme)
	if err != nil || bytes.Equal(fresh, readme) {
		return err
	}
	return os.WriteFile(path, fresh, 0o644)
}

func withTable(readme []byte) ([]byte, error) {
	before, rest, found := bytes.Cut(readme, []byte(tableFrom))
	_, after, ended := bytes.Cut(rest, []byte(tableTo))
	if !found || !ended {
		return nil, fmt.Errorf("README.md has no place for the table of fields, between the lines\n%s%s", tableFrom, tableTo)
	}
	return bytes.Join([][]byte{before, []byte(tableFrom), []byte(fieldTable()), []byte(tableTo), after}, nil), nil
}

// fieldTable is the table of fields in Markdown.
func fieldTable() string {
	var b strings.Builder
	b.WriteString("\n| field | means | a bare number is in | blank means | such as |\n|---|---|---|---|---|\n")
	for _, f := range field.Fields {
		said := words.Fields[f.Name]
		means := said.Label
		if said.Help != "" {
			means += ": " + said.Help
		}
		if len(f.Choices) > 0 {
			means += " (" + strings.Join(f.Choices, ", ") + ")"
		}
		fmt.Fprintf(&b, "| `%s` | %s | %s | %s | `%s` |\n", f.Name, means, f.Bare, f.Default, f.Example)
	}
	b.WriteString("\n")
	return b.String()
}
