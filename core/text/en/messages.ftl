# What is said when something cannot be taken as it was given.
# path: where; found: the value there; accepted: what would be taken.

fault-too-large = The file is too large ({ $found }). A visit file has { $accepted } at most.
fault-empty = The file is empty.
fault-truncated = The file ends in the middle of the document ({ $found }). It was cut off; copy it again.
fault-not-json = The file is not a JSON document; reading stopped at { $found }.
fault-not-a-visit-file = This is no visit file: "format" must be "{ $accepted }".
fault-newer-version = The file is of version { $found }; this program reads up to version { $accepted }. Update the program.
fault-missing = { $path }: this field must be there.
fault-unknown = { $path }: there is no field of this name.
fault-wrong-type = { $path }: "{ $found }" is of the wrong kind; write a value of kind { $accepted }.
fault-not-accepted = { $path }: "{ $found }" is not accepted. { $accepted ->
    [""] Nothing of a similar name exists.
   *[other] Write one of: { $accepted }.
}
fault-out-of-range = { $path }: { $found } cannot be; it must be { $accepted }.
fault-malformed = { $path }: "{ $found }" is not well formed ({ $accepted }).
fault-internal = The program failed on this file: { $found }. Please report it.
