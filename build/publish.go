package main

import "path/filepath"

// publish makes the site as it is put on a host: what the page and scripts need,
// and beside it what is for hosts, for package managers and for who checks.
func publish(root string) (site, error) {
	made, err := pack(root)
	if err != nil {
		return nil, err
	}
	before, _ := readSite(filepath.Join(root, "dist")) // none, the first time
	return made, made.complete(root, versionOf(root), commitOf(root), before)
}

// complete adds what is told of the site or made of its files, each after what
// it is made of. before is a site made earlier, or nil.
func (s site) complete(root, version, commit string, before site) error {
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
