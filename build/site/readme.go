package site

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"saltbite/calc/field"
	"saltbite/site/words"
)

// generated are the tables of README.md: each stands between two marks, the
// lines "<!-- name -->" and "<!-- /name -->".
var generated = []struct {
	name  string
	table func() string
}{
	{"fields", fieldTable},
	{"answers", answerTable},
}

// RefreshReadme writes the tables into README.md.
func RefreshReadme(root string) error {
	path := filepath.Join(root, "README.md")
	readme, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	fresh, err := withTables(readme)
	if err != nil || bytes.Equal(fresh, readme) {
		return err
	}
	return os.WriteFile(path, fresh, 0o644)
}

func withTables(readme []byte) ([]byte, error) {
	for _, g := range generated {
		from, to := "<!-- "+g.name+" -->\n", "<!-- /"+g.name+" -->\n"
		before, rest, found := bytes.Cut(readme, []byte(from))
		_, after, ended := bytes.Cut(rest, []byte(to))
		if !found || !ended {
			return nil, fmt.Errorf("README.md has no place for a table, between the lines\n%s%s", from, to)
		}
		readme = bytes.Join([][]byte{before, []byte(from), []byte(g.table()), []byte(to), after}, nil)
	}
	return readme, nil
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

// answerTable is the table of answers in Markdown.
func answerTable() string {
	var b strings.Builder
	b.WriteString("\n| answer | is | value is in |\n|---|---|---|\n")
	for _, a := range field.Answers {
		unit := a.Unit
		if a.Form == field.GaugeNumber {
			unit = "Brown & Sharpe number, 00 is -1"
		}
		if a.Form == field.ClockTime {
			unit = "min after the midnight before `start`"
		}
		fmt.Fprintf(&b, "| `%s` | %s | %s |\n", a.Name, a.Noun, unit)
	}
	b.WriteString("\n")
	return b.String()
}
