//go:build js && long

package main

import "github.com/hack-pad/safejs"

// putCalls puts the calls on the scope that may take long, or that few ask for.
func putCalls(scope safejs.Value) error {
	for _, call := range []struct {
		name string
		call bytesCall
	}{
		{"saltbiteMeasure", measure}, {"saltbitePrepare", prepare}, {"saltbiteEvenness", evened}, {"saltbiteDistances", distances}, {"saltbiteAlong", along},
		{"saltbiteTrial", ofText(trialOf)}, {"saltbiteBatch", ofText(classOf)}, {"saltbiteLog", ofText(logOf)},
	} {
		if err := register(scope, call.name, call.call); err != nil {
			return err
		}
	}
	return nil
}

// ofText is a call that takes and gives text alone.
func ofText(call func(string) string) bytesCall {
	return func(args string, _ []byte, _ func(float64)) (string, []byte) { return call(args), nil }
}
