// Package seal ties the files of one version of the site together: each is known
// to the others by the hash of its body, so that no file of one version can meet
// one of another, whatever a server, a proxy or a cache between them does.
package seal

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/hex"
	"maps"
	"path"
	"slices"
)

// Seal is the hash of a file's body in two notations.
type Seal struct {
	Integrity string // for HTML's integrity attribute: "sha256-" and base64
	Hash      string // in hexadecimal
}

// Of is the seal of a body.
func Of(body []byte) Seal {
	sum := sha256.Sum256(body)
	return Seal{"sha256-" + base64.StdEncoding.EncodeToString(sum[:]), hex.EncodeToString(sum[:])}
}

// Tag begins the hash: an address that ends in "?v=" and the tag is new with
// every body, so that no cache gives an old one for it.
func (s Seal) Tag() string { return s.Hash[:12] }

// Version names a set of files by what is in all of them.
func Version(files map[string][]byte) string {
	var all bytes.Buffer
	for _, name := range slices.Sorted(maps.Keys(files)) {
		all.WriteString(Of(files[name]).Hash + "  " + name + "\n")
	}
	return Of(all.Bytes()).Tag()
}

// namesNone are the endings of files that name no other file; most are large.
var namesNone = map[string]bool{".wasm": true, ".png": true, ".gz": true, ".br": true}

// Replace gives a file another body and writes its new seal into every file that
// names the old one. Those files have then changed, so their seals are replaced too.
func Replace(files map[string][]byte, name string, body []byte) {
	was, is := Of(files[name]), Of(body)
	files[name] = body
	for _, other := range slices.Sorted(maps.Keys(files)) {
		if other == name || namesNone[path.Ext(other)] {
			continue
		}
		text := files[other]
		for _, s := range [][2]string{{was.Integrity, is.Integrity}, {was.Hash, is.Hash}, {was.Tag(), is.Tag()}} {
			if bytes.Contains(text, []byte(s[0])) { // else it would be copied for nothing
				text = bytes.ReplaceAll(text, []byte(s[0]), []byte(s[1]))
			}
		}
		if !bytes.Equal(text, files[other]) {
			Replace(files, other, text)
		}
	}
}
