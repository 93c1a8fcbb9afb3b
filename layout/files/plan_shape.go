package files

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"reflect"
	"strconv"
	"strings"
)

// maxDepth is how deep a plan file may nest. A cut tree that obeys the rules is
// about eight nodes deep, two levels each.
const maxDepth = 100

// checkSyntax refuses what encoding/json would let pass: a key given twice,
// deep nesting, and anything after the value.
func checkSyntax(data []byte) error {
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	if err := checkValue(d, "", 0); err != nil {
		return err
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return errors.New("want one JSON object and nothing after it")
	}
	return nil
}

func checkValue(d *json.Decoder, path string, depth int) error {
	token, err := d.Token()
	switch {
	case errors.Is(err, io.EOF):
		return io.ErrUnexpectedEOF
	case err != nil:
		return err
	case depth > maxDepth:
		return fmt.Errorf("%s: nests more than %d deep", path, maxDepth)
	case token == json.Delim('{'):
		return checkObject(d, path, depth)
	case token == json.Delim('['):
		for i := 0; d.More(); i++ {
			if err := checkValue(d, path+"["+strconv.Itoa(i)+"]", depth+1); err != nil {
				return err
			}
		}
		_, err = d.Token()
	}
	return err
}

// checkObject compares keys without regard to case, as encoding/json does.
func checkObject(d *json.Decoder, path string, depth int) error {
	seen := map[string]bool{}
	for d.More() {
		token, err := d.Token()
		if err != nil {
			return err
		}
		key, _ := token.(string)
		at := join(path, key)
		if seen[strings.ToLower(key)] {
			return fmt.Errorf("%s: the key is there twice", at)
		}
		seen[strings.ToLower(key)] = true
		if err := checkValue(d, at, depth+1); err != nil {
			return err
		}
	}
	_, err := d.Token()
	return err
}

func join(path, key string) string {
	if path == "" {
		return key
	}
	return path + "." + key
}

// checkShape finds the first key that the type requires and the value lacks, a
// null where there must be a value, and a list of the wrong length.
func checkShape(value any, t reflect.Type, path string) error {
	switch v := value.(type) {
	case nil:
		if t.Kind() != reflect.Pointer {
			return fmt.Errorf("%s: found null, want a value", path)
		}
	case map[string]any:
		return checkKeys(v, t, path)
	case []any:
		if t.Kind() == reflect.Array && t.Len() != len(v) {
			return fmt.Errorf("%s: want a list of %d", path, t.Len())
		}
		if t.Kind() != reflect.Array && t.Kind() != reflect.Slice {
			return fmt.Errorf("%s: found a list, want one value", path)
		}
		for i, e := range v {
			if err := checkShape(e, t.Elem(), path+"["+strconv.Itoa(i)+"]"); err != nil {
				return err
			}
		}
	}
	return nil
}

func checkKeys(object map[string]any, t reflect.Type, path string) error {
	switch t.Kind() {
	case reflect.Pointer:
		return checkKeys(object, t.Elem(), path)
	case reflect.Map:
		for key, e := range object {
			if err := checkShape(e, t.Elem(), join(path, key)); err != nil {
				return err
			}
		}
		return nil
	case reflect.Struct:
		return checkFields(object, t, path)
	}
	return fmt.Errorf("%s: found an object, want one value", path)
}

func checkFields(object map[string]any, t reflect.Type, path string) error {
	for i := range t.NumField() {
		f := t.Field(i)
		if f.Anonymous {
			if err := checkFields(object, f.Type, path); err != nil {
				return err
			}
			continue
		}
		key, options, _ := strings.Cut(f.Tag.Get("json"), ",")
		value, there := object[key]
		optional := options == "omitempty" || options == "omitzero" || f.Tag.Get("absent") != ""
		if optional && value == nil {
			continue
		}
		if !there {
			return fmt.Errorf("%s: the key is missing", join(path, key))
		}
		if err := checkShape(value, f.Type, join(path, key)); err != nil {
			return err
		}
	}
	return nil
}
