package testdata

import (
	"fmt"
	"os"
	"strings"
)

// Changed compares a text with what is written down in a file, and says how the first
// line that differs reads now; "" if none differs. With SALTBITE_WRITE set, it writes
// the text into the file instead.
func Changed(file, written, now string) (string, error) {
	if os.Getenv("SALTBITE_WRITE") != "" {
		return "", os.WriteFile(file, []byte(now), 0o644)
	}
	old, lines := strings.Split(written, "\n"), strings.Split(now, "\n")
	for i := range max(len(old), len(lines)) {
		if was, is := lineOf(old, i), lineOf(lines, i); was != is {
			return fmt.Sprintf("line %d of %s is %q, and now it is %q", i+1, file, was, is), nil
		}
	}
	return "", nil
}

func lineOf(lines []string, i int) string {
	if i < len(lines) {
		return lines[i]
	}
	return "no line"
}
