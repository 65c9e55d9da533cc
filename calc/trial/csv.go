package trial

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// Table is a log as a spreadsheet has it: a column for each field, a row for
// each run. All rows have a cell for each column.
type Table struct {
	Columns []string
	Rows    [][]string
}

// CSV is the table as RFC 4180 has it: commas, lines that end in CR LF, quotes
// round cells that need them, the columns' names first. A cell that a
// spreadsheet would take for a formula gets an apostrophe in front, which
// ReadCSV takes away again (OWASP, CSV Injection, from memory).
func (t Table) CSV() string {
	var b strings.Builder
	writeLine(&b, t.Columns)
	for _, row := range t.Rows {
		writeLine(&b, row)
	}
	return b.String()
}

func writeLine(b *strings.Builder, cells []string) {
	for i, cell := range cells {
		if i > 0 {
			b.WriteByte(',')
		}
		if formula(cell) {
			cell = "'" + cell
		}
		if len(cells) == 1 && cell == "" || strings.ContainsAny(cell, ",;\t\r\n\"") || strings.TrimSpace(cell) != cell {
			cell = `"` + strings.ReplaceAll(cell, `"`, `""`) + `"`
		}
		b.WriteString(cell)
	}
	b.WriteString("\r\n")
}

// formula says whether a spreadsheet may take a cell for a formula: blanks and
// apostrophes aside it begins with one of the signs that do, also in their wide
// forms, and is no number.
func formula(cell string) bool {
	rest := strings.TrimLeft(cell, "' \t\r\n")
	sign, _ := utf8.DecodeRuneInString(rest)
	return rest != "" && strings.ContainsRune("=+-@＝＋－＠", sign) && !(rest == cell && isNumber(cell))
}

// isNumber says whether a text is a number with nothing beside it.
func isNumber(text string) bool {
	digits := strings.TrimLeft(text, "+-")
	return len(text)-len(digits) <= 1 && strings.Trim(digits, "0123456789") == strings.Repeat(".", strings.Count(digits, ".")) &&
		strings.Count(digits, ".") <= 1 && strings.ContainsAny(digits, "0123456789")
}

// Damage is a line of a file that could not be read. The others were.
type Damage struct {
	Line int    // from 1
	Text string // its first 40 characters
	Why  Defect
}

// Defect is what is wrong with a line.
type Defect string

const (
	Cells    Defect = "cells"    // more or fewer cells than there are columns
	Quote    Defect = "quote"    // a quote that is not closed, or text after one
	Encoding Defect = "encoding" // not UTF-8
	Twice    Defect = "twice"    // two columns of one name: the first stands
)

// ReadCSV reads a table as spreadsheets write it: RFC 4180, and with semicolons
// or tabs instead of commas, lines that end in LF or CR alone, a byte order
// mark, a first line "sep=;". Between semicolons a comma inside a number is its
// decimal mark, and becomes a point. A line that can't be read is left
// out and listed, and reading goes on with the next: a quote that is never
// closed costs its own line only.
func ReadCSV(text string) (Table, []Damage) {
	r := csvReader{rest: strings.TrimPrefix(text, "\ufeff"), line: 1}
	r.separator = r.findSeparator()
	var table Table
	var places []int // of the columns in the file
	wide := 0
	for r.rest != "" {
		start := r
		cells, defect := r.record(wide)
		switch {
		case defect != "":
			r = start
			r.damaged(r.skipLine(), start.line, defect)
		case blank(cells):
		case wide == 0:
			wide = len(cells)
			table.Columns, places = r.header(cells, start.line)
		default:
			if row := at(places, cells); !blank(row) {
				table.Rows = append(table.Rows, row)
			}
		}
	}
	return table, r.damage
}

// header is the names of the columns and their places in the file.
func (r *csvReader) header(cells []string, line int) (names []string, places []int) {
	for i, name := range cells {
		switch name = strings.TrimSpace(name); {
		case name == "":
		case slices.Contains(names, name):
			r.damaged(name, line, Twice)
		default:
			names, places = append(names, name), append(places, i)
		}
	}
	return names, places
}

// at is the cells at some places of a line.
func at(places []int, cells []string) []string {
	row := make([]string, len(places))
	for i, place := range places {
		row[i] = cells[place]
	}
	return row
}

func blank(cells []string) bool { return strings.TrimSpace(strings.Join(cells, "")) == "" }

// csvReader reads record by record.
type csvReader struct {
	rest      string
	line      int
	separator byte
	damage    []Damage
}

// findSeparator is what stands most often between the names of the columns, or
// what the first line says.
func (r *csvReader) findSeparator() byte {
	first := *r
	head := first.skipLine()
	if sep, said := strings.CutPrefix(strings.ToLower(head), "sep="); said && len(sep) == 1 && strings.Contains(",;\t", sep) {
		*r = first
		return sep[0]
	}
	head = unquoted(head)
	separator := byte(',')
	for _, other := range []byte{';', '\t'} {
		if strings.Count(head, string(other)) > strings.Count(head, string(separator)) {
			separator = other
		}
	}
	return separator
}

// unquoted is a line without what stands between quotes.
func unquoted(line string) string {
	var b strings.Builder
	for i, part := range strings.Split(line, `"`) {
		if i%2 == 0 {
			b.WriteString(part)
		}
	}
	return b.String()
}

// record reads the next line, or lines where quotes hold them together. wide is
// how many cells it must have; 0: any number.
func (r *csvReader) record(wide int) (cells []string, defect Defect) {
	for {
		cell, ok := r.cell()
		if !ok {
			return nil, Quote
		}
		if !utf8.ValidString(cell) {
			return nil, Encoding
		}
		cells = append(cells, cell)
		if r.rest != "" && r.rest[0] == r.separator {
			r.rest = r.rest[1:]
			continue
		}
		r.endLine()
		if wide > 0 && len(cells) != wide && !blank(cells) {
			return nil, Cells
		}
		return cells, ""
	}
}

// cell reads up to the next separator or end of line.
func (r *csvReader) cell() (text string, ok bool) {
	if !strings.HasPrefix(r.rest, `"`) {
		end := strings.IndexAny(r.rest, string(r.separator)+"\r\n")
		if end < 0 {
			end = len(r.rest)
		}
		text, r.rest = r.rest[:end], r.rest[end:]
		return r.meant(text), true
	}
	r.rest = r.rest[1:]
	for {
		end := strings.IndexByte(r.rest, '"')
		if end < 0 {
			return "", false
		}
		text, r.rest = text+r.rest[:end], r.rest[end+1:]
		if !strings.HasPrefix(r.rest, `"`) {
			break
		}
		text, r.rest = text+`"`, r.rest[1:]
	}
	r.line += ends(text)
	return r.meant(text), r.rest == "" || r.rest[0] == r.separator || r.rest[0] == '\r' || r.rest[0] == '\n'
}

// meant is a cell without the apostrophe that keeps it from being a formula,
// and with a point for a decimal comma.
func (r *csvReader) meant(cell string) string {
	if bare, marked := strings.CutPrefix(cell, "'"); marked && formula(bare) {
		return bare
	}
	if r.separator == ';' {
		return pointed(cell)
	}
	return cell
}

// pointed is a cell of numbers with points for their decimal commas. A cell of
// words stays as it is: its first character is no digit or sign, or a comma in it
// does not stand between the digits of a number.
func pointed(cell string) string {
	if cell == "" || !strings.ContainsRune("+-0123456789", rune(cell[0])) {
		return cell
	}
	for _, word := range strings.FieldsFunc(cell, func(r rune) bool { return r == ' ' || r == ';' || r == '\u00a0' }) {
		whole, part, comma := strings.Cut(word, ",")
		if comma && (!isNumber(whole) || part == "" || part[0] < '0' || part[0] > '9' || strings.Contains(part, ",")) {
			return cell
		}
	}
	return strings.ReplaceAll(cell, ",", ".")
}

// endLine goes past the end of a line.
func (r *csvReader) endLine() {
	if r.rest == "" {
		return
	}
	r.rest = strings.TrimPrefix(r.rest, "\r")
	r.line++
	r.rest = strings.TrimPrefix(r.rest, "\n")
}

// skipLine goes past the end of a line, quotes or not, and gives the line.
func (r *csvReader) skipLine() string {
	end := strings.IndexAny(r.rest, "\r\n")
	if end < 0 {
		end = len(r.rest)
	}
	line := r.rest[:end]
	r.rest = r.rest[end:]
	r.endLine()
	return line
}

// ends is how many lines end in a text.
func ends(text string) int {
	return strings.Count(text, "\n") + strings.Count(text, "\r") - strings.Count(text, "\r\n")
}

// damaged puts down a line that can't be read.
func (r *csvReader) damaged(text string, line int, why Defect) {
	r.damage = append(r.damage, Damage{line, firstOf(text), why})
}

// firstOf is the first 40 characters of a text.
func firstOf(text string) string {
	text = strings.ToValidUTF8(text, "\ufffd")
	if runes := []rune(text); len(runes) > 40 {
		return string(runes[:40])
	}
	return text
}
