module saltbite

go 1.26

toolchain go1.26.8

ignore ./site/node_modules

require (
	github.com/agnivade/levenshtein v1.2.2
	github.com/andybalholm/brotli v1.3.0
	github.com/evanw/esbuild v0.28.2
	github.com/hack-pad/safejs v0.1.1
	gonum.org/v1/gonum v0.17.0
)

require golang.org/x/sys v0.4.0 // indirect
