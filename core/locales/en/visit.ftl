### The visit: what is shared, and with whom.

## Visit

visit-subtitle = What your consultant gets, and what comes back
share-title = Share with your consultant
consultants-none = Take in your consultant’s key once, and what you share can be read by nobody else.
consultant-row = Share, and the words to compare
open-sharing = Take in a key, or use a passphrase
open-sharing-detail = From her QR code, or the line she sent you
sharing-page = Share sealed
sealed-page = A sealed file
group-card = Her key
group-by-passphrase = Or a passphrase
group-sealed = It is sealed with a passphrase
field-card = The line from her code
hint-card = Scan her code with a phone’s own camera, or paste the line she sent you here. It begins with drawwell:consultant.
done-card = Take her key in
field-seal-passphrase = Passphrase
hint-seal-passphrase = Tell it to her by voice. Nobody can open the file without it, you included.
done-seal-passphrase = Seal the record with it
field-open-passphrase = Passphrase
hint-open-passphrase = The one you were told
done-open-passphrase = Open it
leave-sealed = Leave this file
leave-sealed-detail = The file itself stays where it is
consultant-words = Do these words match hers?
consultant-words-same = You compared these words
consultant-compare = Read them to each other, on the phone or at the visit. If even one differs, it is not her key.
consultant-compared = You said that they were the same. Compare them again whenever you like.
words-same = The words are the same
words-differ = They differ, or not now
words-differ-detail = Nothing is kept. You can open her card again at any time.
asked-card = A consultant’s card
asked-card-changed = A consultant of this name is here already, with other keys. A new phone or program is a good reason, but ask her. Her old keys are taken out once the new words are the same; undo brings them back.
asked-phone = Another phone of your family
asked-phone-compare = Open this page’s card on the other phone and compare the words. If even one differs, it is not your other phone’s.
asked-file = A file to bring in
asked-phones = Bring in what another phone of your family wrote down?
asked-plain = Bring in what this file says?
asked-new = { $count ->
    [one] One new entry
   *[other] { $count } new entries
}
asked-other = { $count ->
    [one] One entry says something else then
   *[other] { $count } entries say something else then
}
asked-out = { $count ->
    [one] One entry is taken out
   *[other] { $count } entries are taken out
}
asked-undo = Nothing is brought in before you say so, and undo takes all of it back.
asked-settled = It would also set
asked-clears = { $what }: { $before } now, nothing then
asked-dealt = { $count ->
    [one] That a caution was dealt with
   *[other] That { $count } cautions were dealt with
}
asked-more = { $count ->
    [one] and one more
   *[other] and { $count } more
}
asked-take = Bring it in
asked-leave = Leave it
asked-nothing = Nothing waits for an answer.
asked-nothing-do = Open the file again.
phone-known = From now on you can bring in what that phone hands over.
phone-card = This phone’s card
phone-card-detail = For another phone of your family
phone-card-how = Scan this with the other phone’s camera, or take the line there. Then compare the words. Do the same the other way round.
seal-with-words = Seal with: { $words }
seal-with-words-detail = Made up for this file. Write it down or tell it by voice; it is not kept.
consultant-not-compared = You have not compared the words with her yet.
consultant-not-compared-do = Open her page, read the words to each other, and say that they are the same.
share-what-goes = What you leave out on the visit sheet is left out here, too. It is sealed for her alone, and goes by whatever you use: mail, messenger, cable.
not-a-diagnosis-share = What is shared is not a diagnosis. Local guidance and licensed care come first.
share-with = Share with her
share-with-detail = A sealed file that only she can open
consultant-details = Name, note, take out
family-handed-over = The sealed file is written.
bad-card = That is not a consultant’s key.
bad-card-do = Take the whole line that begins with drawwell:consultant, or scan her code again.
bad-card-key = That key is damaged.
bad-card-key-do = Ask for the line again; no letter may be missing.
bad-sealing-key = There is no key to seal for.
bad-sealing-key-do = Take in her key again.
bad-own-keys = The keys of this device can’t be read.
bad-own-keys-do = Restore the record from a backup, or ask for new files to be sealed for a new key.
bad-passphrase-empty = There is no passphrase yet.
bad-passphrase-empty-do = Take the words that are offered, or type some that only you two know.
bad-passphrase-weak = That passphrase is too easy to find out.
bad-passphrase-weak-do = Take the words that are offered, or type at least { $least } characters, { $different } of them different.
sealed-other-key = This file is sealed for another key.
sealed-other-key-do = Ask for it to be sealed for this device.
sealed-wrong-passphrase = That is not its passphrase.
sealed-wrong-passphrase-do = Look at upper and lower case, and try again.
sealed-cut = This sealed file is cut short or changed on its way.
sealed-cut-do = Ask for it again. Nothing of it was taken in.
sealed-too-much-work = Opening this file would take too long on purpose.
sealed-too-much-work-do = Ask for it to be sealed again with this app.
sealed-too-long = This file is far longer than any record.
sealed-too-long-do = Nothing of it was taken in. Ask whether it is the right one.
sealed-not-ours = This sealed file holds something else.
sealed-not-ours-do = Ask whether it is the right one.
sealed-newer = This file is sealed in a way that this version does not know.
sealed-newer-do = Update the app, then try again.
sealed-nothing-waits = No file waits for a passphrase.
sealed-nothing-waits-do = Choose the file again.
signed-not-readable = This is not a signed file.
signed-not-readable-do = Ask for it again.
signed-by-a-stranger = This plan is not from a consultant whose key you took in.
signed-by-a-stranger-do = Take in her key first, or ask from whom it is. Nothing of it was taken in.
signed-not-as-it-was = This file was changed after it was signed.
signed-not-as-it-was-do = Ask for it again. Nothing of it was taken in.
family-file-not-one = This is not a family’s record.
family-file-not-one-do = Ask whether it is the right file. Nothing of it was taken in.
family-file-line = Line { $line } of this record can’t be read.
family-file-line-do = Ask for the file again. Nothing of it was taken in.
family-file-limits = This record holds more of something than any family’s does.
family-file-limits-do = Ask whether it is the right file. Nothing of it was taken in.
family-file-ahead = This file is dated more than a day ahead.
family-file-ahead-do = Set the clock right on the device it comes from, and ask for it again. Nothing of it was taken in.
family-file-unsigned = Nobody signed this file.
family-file-unsigned-do = Ask for it to be shared again with the newest version. Nothing of it was taken in.
family-file-stranger = This file is not from a phone of your family that you know.
family-file-stranger-do = Compare the other phone’s card first: Visit, then sharing. Nothing of it was taken in.
family-file-other = Some entries in this file did not fit what is here and were left. Ask the family whether a phone was set up from a copy.
family-key-changed = This file is signed with another key than this family’s.
family-key-changed-do = Ask the family by voice whether they changed phones. If they did, remove the family here and take its record in anew. Nothing of it was taken in.
desk-unsealed = A file in the watched folder was not sealed.
desk-unsealed-do = Open it by hand if you know where it comes from. Nothing of it was taken in.
sealed-too-many-wait = { $count } files wait for their passphrases already.
sealed-too-many-wait-do = Open or leave some of them first.
family-file-of-another = This is another family’s record.
family-file-of-another-do = It can only be opened in the consultant’s program, or on a phone whose record is still empty.
open-tables = Tables
open-tables-detail = For a spreadsheet, one file each
tables-page = Tables
tables-intro = Plain CSV. What you leave out on the visit sheet is left out here, too. What is shared is not a diagnosis.
tables-one-by-one = One by one
table-all = All tables in one file
table-all-detail = A zip, with what each column holds beside them
table-sessions = Sessions
table-marks = What was marked in sessions
table-feeds = Feeds
table-signs = Temperature and signs
table-weights = Weights
table-checks = Checks of pumps
table-readings = Readings of the checks
table-fits = Nipples measured
table-life-events = Changes in life
table-notes = Notes
table-questions = Questions
table-children = Children
table-pumps = Pumps
table-parts = Parts that wear
table-flanges = Flanges
table-gauges = Gauges
open-erasing = Erase from this device
open-erasing-detail = Says first what goes and what remains
erasing-page = Erase the record
erasing-headline = This cannot be undone
erasing-caption = Everything written down on this device goes for good.
erasing-goes = What goes
erasing-goes-record = The record with everything in it, and its keys
erasing-goes-backups = { $count ->
    [one] One copy that was made beside it
   *[other] { $count } copies that were made beside it
}
erasing-goes-aside = Files that were set aside because they were damaged
erasing-remains = What remains
erasing-remains-files = Files you handed out or saved: sheets, tables, calendars, sealed records
erasing-remains-consultant = What your consultant has. Ask her to remove it, too.
erasing-remains-backup = Copies that this device’s own backup may have made
erasing-first = If you want to keep it, hand the whole record out first.
erase-record = Erase it
record-erased = The record is erased from this device.
visit-files = Files for other programs
visit-family = Children, settings, your record
visit-family-detail = Who it is about, how it looks, where it is kept
visit-last = Last visit
visit-next = Next visit
visits-title = Visits
visits-none = No visit is written down yet.
questions-title = Questions for the visit
questions-none = Whatever you want to ask can wait here.
hand-over-health-record = Health record
hand-over-health-record-detail = HL7 FHIR R4, for a clinic’s own program
family-subtitle = Children, settings, your record
settings = Settings
settings-detail = { $volume } · { $vacuum } · { $temperature } · { $hand }
record-here = Where it lies
record-here-detail = On this device only. Nothing is sent anywhere.
backup = Safety copy
backup-made = made { $span } ago, beside the record
backup-none = none yet; the first one makes itself
hand-over-record = Take a copy out
hand-over-record-detail = the whole record, as a file
pick-record = Bring a file in
pick-record-detail = from another phone, or a copy
record-handed-over = The file was written.
about-care = Not a diagnosis
about-care-detail = Drawwell keeps a record and does sums. It never urges more vacuum. Your care team, the pump’s manual and the unit’s own rules come first. If you feel ill or worried, ask them.
about-zones = Clock changes
about-zones-detail = Drawwell carries the world’s clock changes as they were known in release { $release } of the IANA time zone data. Where the clock of this device shows another hour now, the device’s hour is taken.
read-only = The record can be read, but nothing can be written down: the disk is full or may not be written. Free some space or allow writing, then close the app and open it again.
clock-ahead = Another device’s clock was { $span } ahead. Please set it right.
