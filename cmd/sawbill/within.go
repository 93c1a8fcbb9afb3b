package main

import (
	"regexp"
	"strconv"
	"strings"
)

// percent is a share in hundredths, 0 to 100.
type percent float64

// String writes it as --within takes it: 1.5%.
func (p percent) String() string { return strconv.FormatFloat(float64(p), 'f', -1, 64) + "%" }

// share is the same of 1.
func (p percent) share() float64 { return float64(p) / 100 }

// parseWithin reads --within: a plain decimal number from 0 to 100 with a percent
// sign, and perhaps a space between them. Without the sign only 0 is clear: 0.01
// might stand for one in a hundred or for one in ten thousand.
func parseWithin(text string) (percent, error) {
	number, signed := strings.CutSuffix(strings.TrimSpace(text), "%")
	number = strings.TrimSpace(number)
	if !plainDecimal(number) {
		return 0, badWithin(text)
	}
	value, err := strconv.ParseFloat(number, 64)
	switch {
	case err != nil || value > 100:
		return 0, badWithin(text)
	case value > 0 && !signed:
		return 0, badWithin(text).withHint("did you mean " + number + "%?")
	}
	return percent(value), nil
}

func plainDecimal(text string) bool {
	return regexp.MustCompile(`^([0-9]+(\.[0-9]*)?|\.[0-9]+)$`).MatchString(text)
}

func badWithin(text string) *failure {
	return usageError("--within %q: want a share from 0%% to 100%%, such as 1%% or 0.5%%", text)
}
