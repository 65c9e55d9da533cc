module saltbite

go 1.26

toolchain go1.26.8

ignore ./site/node_modules
