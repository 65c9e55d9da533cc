package site

import (
	"crypto/sha256"
	"fmt"
	"strings"
)

const sumsName = "SHA256SUMS"

// sums lists the SHA-256 of every file in the order of their names, as
// `sha256sum -c` reads it.
func (s Files) sums() []byte {
	var b strings.Builder
	for _, name := range s.Names() {
		if name != sumsName {
			fmt.Fprintf(&b, "%x  %s\n", sha256.Sum256(s[name]), name)
		}
	}
	return []byte(b.String())
}
