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
fault-not-accepted = { $path }: "{ $found }" is not accepted. Write one of: { $accepted }.
fault-not-accepted-alone = { $path }: "{ $found }" is not accepted, and nothing of a similar name exists.
fault-out-of-range = { $path }: { $found } cannot be; it must be { $accepted }.
fault-malformed = { $path }: "{ $found }" is not well formed ({ $accepted }).
fault-internal = The program failed on this file: { $found }. Please report it.

# Errors at the boundary.
error-store-cannot-open = The database cannot be opened. Check that its folder exists and can be written. ({ $detail })
error-store-newer = The database was written by a newer program: it is of version { $found }, and this program knows versions up to { $newest }. Update the program; nothing was changed.
error-store-migration = The database could not be brought up to date; nothing was changed. Make room on the disk, close other programs that hold it and start again. ({ $detail })
error-store-disk-full = The disk is full, so this was not kept. Make room and enter it again.
error-store-read-only = The folder cannot be written, so this was not kept. Choose another folder or allow writing.
error-store-busy = Another program is holding the database, so this was not kept. Close it and try again.
error-store-damaged = What is stored is damaged. Restore a backup. ({ $detail })
error-store-failed = The database failed, so this was not kept. Enter it again; if it fails again, close the program and open it anew. ({ $detail })
error-store-file = A file could not be read or written. Check that it is there and may be written. ({ $detail })
error-clock-behind = The clock of this device says { $now }, but the last entry was made on { $last }. Set the clock before you go on: dates, timers and reports follow it. Nothing that was entered is lost.
error-no-such-backup = There is no backup number { $number } any more. Choose another from the list.
error-not-found = This record does not exist any more. Go back to the list.
error-no-such-field = There is no field "{ $field }".
error-no-such-finding = There is no finding "{ $finding }".
error-no-such-answer = "{ $found }" is no answer to "{ $finding }".
error-no-such-name = There is no { $field } "{ $found }".
error-not-accepted = { $field }: "{ $found }" is not accepted. Write one of: { $accepted }.
error-out-of-range = { $field }: { $found } cannot be. It must be { $accepted }.
error-bad-accuracy = { $field }: an accuracy of { $found } cannot be. It must be { $accepted }.
error-text-too-long = { $field }: this is too long. Write at most { $most } characters.
error-gate-not-met = Step { $step } is not done yet. { $wanting } { $back } To mark it as done all the same, write down why.
error-timer-not-run = Step { $step } is not done yet. { $wanting } To mark it as done all the same, write down why.
error-gate-not-read = Step { $step } is not done yet. { $wanting } To mark it as done all the same, write down why.
error-earlier-step-open = Step { $step } is not done yet. It rests on what is still to do: { $earlier } Do that first, or leave it out with a reason. To mark step { $step } as done all the same, write down why.
error-caution-not-acknowledged = Step { $step } is not done yet. Acknowledge at it first that you have read this: { $caution }
error-not-proven = The visit is not ended yet. To say that it is put right and proven, this is missing: { $open } Do it, choose another outcome, or choose this one all the same; the report then tells what is missing.
error-no-value = { $field }: nothing was written.
error-not-a-number = { $field }: "{ $found }" does not start with a number. Write for example 12.5.
error-ambiguous-number = { $field }: "{ $found }" can be read in two ways. Write it without the comma.
error-no-reading = { $field }: "{ $found }" is not a number that can be read here.
error-no-unit = { $field }: "{ $found }" has no unit. Write one of: { $accepted }.
error-wrong-unit = { $field }: "{ $found }" is not a unit of this. Write one of: { $accepted }.

unlikely-value = { $value } is unusual here. Is it right? It is kept as written.
site-without-name = Site without a name
answer-yes = yes
answer-no = no
answer-low = low
answer-normal = normal
answer-high = high
count = { $count }
error-bad-learned-file = This is not a file of learned counts, or it was made by another version. Choose another file. ({ $detail })
error-own-learned-file = These counts were made here and count already.
error-not-exported = The evidence cannot be written as a network. ({ $detail })
error-report-not-written = The report was not written. Choose another name or folder; nothing was left behind. ({ $detail })
error-report-failed = The report could not be made. ({ $detail })
error-report-not-opened = The report could not be opened. Open it from its folder. ({ $detail })

# Photos and signatures.
photo-before = As found
photo-after = As left
photo-other = Other
signature-technician = Technician
signature-customer = Customer
signature-before-change = Given before the visit was changed. Have it signed again if that matters.
visit-is-signed = Signed on { $signed }. Site and system stay as they were signed.
error-photo-format = This is neither a JPEG nor a PNG picture. Choose another file.
error-photo-too-large = The picture is too large ({ $size }). A photo has at most { $megabytes } MB and { $megapixels } million pixels. Take it again at a lower resolution.
error-photo-damaged = The picture cannot be read. Take it again. ({ $detail })
error-too-many-photos = The photo was not kept: a visit has at most { $most } photos. Take one away first.
error-caption-too-long = The caption is too long. Write at most { $most } characters.
error-name-too-long = The name is too long. Write at most { $most } characters.
error-signature-no-name = Write the name in print beside the signature.
error-signature-empty = Nothing was drawn. Sign in the field.
error-signature-too-much = There are too many strokes. Clear the field and sign again.
error-signature-damaged = The signature could not be read. Clear the field and sign again.
error-visit-signed = This visit was signed on { $signed }, so its site and system stay as they were signed. Take the signatures away first, or start another visit at this site.
error-report-no-room = The report was not written: there is no room left in { $folder }. Make room or choose another place; nothing was left behind.
error-report-read-only = The report was not written: the folder { $folder } cannot be written. Choose another folder; nothing was left behind.
