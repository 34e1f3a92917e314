package text

// The waist, where it hangs loose.
const (
	StyleLoose ID = "Leave it {1} loose? With {2} it is {3}."
)
