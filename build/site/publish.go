// Package site makes the finished site: the program, the page round it, and what
// stands beside them in dist/.
package site

import "path/filepath"

// Publish makes the site as it is put on a host: what the page and scripts need,
// and also the files for hosts, for package managers and for checking.
func Publish(root string) (Files, error) {
	version := versionOf(root)
	made, err := pack(root, version)
	if err != nil {
		return nil, err
	}
	before, _ := Read(filepath.Join(root, "dist")) // the first time it fails, and nothing is reused
	return made, made.complete(root, version, commitOf(root), before)
}

// complete adds the files that describe the site or are made from its files, in
// the order in which they need each other. before is a site made earlier, or nil.
func (s Files) complete(root, version, commit string, before Files) error {
	of, err := materialsOf(root)
	if err != nil {
		return err
	}
	s["package.json"] = npmPackage(version)
	s["versions.txt"] = of.versions(version, commit)
	if s["licences.txt"], err = of.licences(root); err != nil {
		return err
	}
	if s["hosting.txt"], err = s.note(root); err != nil {
		return err
	}
	s.compress(before)
	s[sumsName] = s.sums()
	return nil
}
