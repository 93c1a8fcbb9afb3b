package steps

// Notes are the cautions of a step and whatever else must be said beside it, each
// a sentence.
func (s *Step) Notes() []string {
	var list []string
	for _, c := range s.Cautions {
		list = append(list, string(c))
	}
	if s.Oversize != "" {
		list = append(list, s.Oversize)
	}
	return list
}
