### The visit: what is shared, and with whom.

## Visit

visit-subtitle = What you share with your consultant, and what comes back
share-title = Share with your consultant
consultants-none = Add your consultant’s key once. Then nobody else can read what you share.
consultant-row = Share, and compare the words
open-sharing = Add a key, or use a passphrase
open-sharing-detail = From your consultant’s QR code, or the line you were sent
sharing-page = Share sealed
sealed-page = A sealed file
group-card = Your consultant’s key
group-by-passphrase = Or a passphrase
group-sealed = It is sealed with a passphrase
field-card = The line from the code
hint-card = Scan your consultant’s code with your phone’s camera, or paste the line you were sent. It begins with drawwell:consultant.
done-card = Add the key
field-seal-passphrase = Passphrase
hint-seal-passphrase = Say it to your consultant by voice. Nobody can open the file without it, and that includes you.
done-seal-passphrase = Seal the record with it
field-open-passphrase = Passphrase
hint-open-passphrase = The one you were given
done-open-passphrase = Open it
leave-sealed = Close this file
leave-sealed-detail = The file itself stays where it is
consultant-words = Are the words the same on both devices?
consultant-words-same = You compared these words
consultant-compare = Read them to each other, on the phone or at your visit. If even one word differs, it is not your consultant’s key.
consultant-compared = You said they were the same. You can compare them again any time.
words-same = The words are the same
words-differ = They differ, or not now
words-differ-detail = Nothing is saved. You can open the card again any time.
asked-card = A consultant’s card
asked-card-changed = You already have a consultant of this name, with different keys. A new phone or program is a good reason, but please ask. The old keys are removed once you confirm the new words. Undo restores them.
asked-phone = Another phone of your family
asked-phone-compare = Open this page’s card on the other phone and compare the words. If even one word differs, it is not your other phone.
asked-file = A file to import
asked-phones = Import what another phone of your family logged?
asked-plain = Import this file?
asked-new = { $count ->
    [one] One new entry
   *[other] { $count } new entries
}
asked-other = { $count ->
    [one] One entry would change
   *[other] { $count } entries would change
}
asked-out = { $count ->
    [one] One entry would be removed
   *[other] { $count } entries would be removed
}
asked-undo = Nothing is imported until you say so. You can undo all of it.
asked-settled = It would also set
asked-clears = { $what }: from { $before } to empty
asked-dealt = { $count ->
    [one] One caution as dealt with
   *[other] { $count } cautions as dealt with
}
asked-more = { $count ->
    [one] and one more
   *[other] and { $count } more
}
asked-take = Import
asked-leave = Don’t import
asked-nothing = There is nothing to answer.
asked-nothing-do = Open the file again.
phone-known = From now on you can import what that phone shares.
phone-card = This phone’s card
phone-card-detail = For another phone of your family
phone-card-how = Scan this with the other phone’s camera, or send it the line. Then compare the words. Do the same the other way round.
seal-with-words = Seal with: { $words }
seal-with-words-detail = Made for this file only. Write these words on paper or say them by voice. They are not saved.
consultant-not-compared = You have not compared the words with your consultant yet.
consultant-not-compared-do = Open your consultant’s page, read the words to each other, and confirm that they are the same.
share-what-goes = Whatever you left off the visit sheet is left out here too. Only your consultant can open it, so send it any way you like.
not-a-diagnosis-share = What you share is not a diagnosis. Local guidance and licensed care come first.
share-with = Share with { $name }
share-with-unnamed = Share with your consultant
share-with-detail = A sealed file. Nobody else can open it
consultant-details = Name, note, remove
family-handed-over = The sealed file was saved.
bad-card = That is not a consultant’s key.
bad-card-do = Copy the whole line that begins with drawwell:consultant, or scan the code again.
bad-card-key = That key is damaged.
bad-card-key-do = Ask for the line again. Every letter counts.
bad-sealing-key = There is no key to seal with.
bad-sealing-key-do = Add your consultant’s key again.
bad-own-keys = We can’t read this device’s keys.
bad-own-keys-do = Restore the record from a backup. Or ask for new files, sealed with a new key.
bad-passphrase-empty = There is no passphrase yet.
bad-passphrase-empty-do = Use the suggested words, or type some that only the two of you know.
bad-passphrase-weak = That passphrase is too easy to guess.
bad-passphrase-weak-do = Use the suggested words. Or type at least { $least } characters, { $different } of them different.
sealed-other-key = This file is sealed for a different key.
sealed-other-key-do = Ask for it to be sealed for this device.
sealed-wrong-passphrase = That is not the right passphrase.
sealed-wrong-passphrase-do = Check capital and small letters, and try again.
sealed-cut = This sealed file was cut short or changed on its way.
sealed-cut-do = Ask for it again. Nothing was imported.
sealed-too-much-work = This file was made to be very slow to open, so it was not opened.
sealed-too-much-work-do = Ask for it to be sealed again with Drawwell.
sealed-too-long = This file is far bigger than any record.
sealed-too-long-do = Ask if it is the right one. Nothing was imported.
sealed-not-ours = This sealed file contains something we can’t use.
sealed-not-ours-do = Ask if it is the right one.
sealed-newer = This file is sealed in a way that this version does not know.
sealed-newer-do = Update the app, then try again.
sealed-nothing-waits = No file needs a passphrase.
sealed-nothing-waits-do = Choose the file again.
signed-not-readable = This is not a signed file.
signed-not-readable-do = Ask for it again.
signed-by-a-stranger = This plan is not from a consultant whose key you have added.
signed-by-a-stranger-do = Add that consultant’s key first, or ask who sent it. Nothing was imported.
signed-not-as-it-was = This file was changed after it was signed.
signed-not-as-it-was-do = Ask for it again. Nothing was imported.
family-file-not-one = This is not a family’s record.
family-file-not-one-do = Ask if it is the right file. Nothing was imported.
family-file-line = We can’t read line { $line } of this record.
family-file-line-do = Ask for the file again. Nothing was imported.
family-file-limits = This record has more of something than any family’s does.
family-file-limits-do = Ask if it is the right file. Nothing was imported.
family-file-ahead = This file is dated more than a day ahead.
family-file-ahead-do = Set the clock right on the device it comes from, and ask for it again. Nothing was imported.
family-file-unsigned = Nobody signed this file.
family-file-unsigned-do = Ask for it to be shared again with the newest version. Nothing was imported.
family-file-stranger = This file is not from a phone of your family that you have confirmed.
family-file-stranger-do = First compare the other phone’s card, under Visit, sharing. Nothing was imported.
family-file-other = Some entries in this file did not match and were not imported. Ask the family if a phone was set up from a copy.
family-key-changed = This file is signed with a different key than this family’s.
family-key-changed-do = Ask the family by voice if they changed phones. If they did, remove the family here and import its record again. Nothing was imported.
desk-unsealed = A file in the watched folder was not sealed.
desk-unsealed-do = Open it yourself if you know where it comes from. Nothing was imported.
sealed-too-many-wait = { $count } files already need a passphrase.
sealed-too-many-wait-do = Open or close some of them first.
family-file-of-another = This is another family’s record.
family-file-of-another-do = Only the consultant’s program can open it, or a phone whose record is still empty.
open-tables = Tables
open-tables-detail = One file each, for a spreadsheet
tables-page = Tables
tables-intro = Plain CSV files. Whatever you left off the visit sheet is left out here too. This is not a diagnosis.
tables-one-by-one = One by one
table-all = All tables in one file
table-all-detail = A zip file, with a note on what each column means
table-sessions = Sessions
table-marks = What was logged in sessions
table-feeds = Feeds
table-signs = Temperature and signs
table-weights = Weights
table-checks = Pump checks
table-readings = Readings of the checks
table-fits = Nipple measurements
table-life-events = Life changes
table-notes = Notes
table-questions = Questions
table-children = Children
table-pumps = Pumps
table-parts = Parts that wear
table-flanges = Flanges
table-gauges = Gauges
table-containers = Bottles of milk
table-milk-events = What happened to bottles
table-cleanings = Parts cleaned
open-erasing = Erase from this device
open-erasing-detail = First shows what goes and what stays
erasing-page = Erase the record
erasing-headline = You can’t undo this
erasing-caption = Everything logged on this device is deleted for good.
erasing-goes = What goes
erasing-goes-record = The record with everything in it, and its keys
erasing-goes-backups = { $count ->
    [one] One safety copy of it
   *[other] { $count } safety copies of it
}
erasing-goes-aside = Damaged files that were moved aside
erasing-remains = What stays
erasing-remains-files = Files you shared or saved: sheets, tables, calendars, sealed records
erasing-remains-consultant = What your consultant has. Ask to have it removed, too.
erasing-remains-backup = Copies that this device’s own backup may have made
erasing-first = To keep it, export the whole record first.
erase-record = Erase it
record-erased = The record is erased from this device.
visit-files = Files for other programs
consent-title = Counted with other families
consent-subtitle = Only if you say yes
consent-none = No network counts you.
consent-open = May a network of clinics count you?
consent-open-detail = Nothing is counted unless you say yes
consent-what-for = May a network of clinics count you?
consent-what-for-line = Your name, dates and notes are not counted. Your consultant passes your figures on. Your care is the same if you say no. An ethics board must review these words before they are used.
consent-how-long = For how long?
consent-how-long-line = You can take your yes back at any time, with one tap.
consent-months = { $months } months
consent-open-ended = Until you take it back
consent-until = Until { $date }
consent-no = No, do not count me
consent-withdraw = Take your yes back
consent-withdraw-detail = The network removes your figures when you next share your record
visit-family = Children, settings, your record
visit-family-detail = Who it is about, how it looks, where it is kept
visit-last = Last visit
visit-next = Next visit
visits-title = Visits
visits-none = No visit logged yet.
questions-title = Questions for the visit
questions-none = Add any questions here so you don’t have to remember them.
hand-over-health-record = Health record
hand-over-health-record-detail = HL7 FHIR R4, for a clinic’s own program
family-subtitle = Children, settings, your record
settings = Settings
settings-detail = { $volume } · { $vacuum } · { $temperature } · { $hand }
record-here = Where it is kept
record-here-detail = On this device only. Nothing is sent anywhere.
backup = Safety copy
backup-made = made { $span } ago, next to the record
backup-none = none yet; the first one is made by itself
hand-over-record = Export a copy
hand-over-record-detail = the whole record, as a file
pick-record = Import a file
pick-record-detail = from another phone, or a copy
record-handed-over = The file was saved.
about-care = Not a diagnosis
about-care-detail = Drawwell keeps a log and does the sums. It never asks for more vacuum. Your care team, your pump’s manual and your unit’s own rules come first. If you feel ill or worried, ask them.
about-zones = Clock changes
about-zones-detail = Drawwell knows the world’s clock changes as of release { $release } of the IANA time zone data. If this device’s clock now shows a different hour, its hour is used.
read-only = You can read the record, but nothing can be saved. The disk is full or locked. Free up some space or allow writing, then close the app and open it again.
clock-ahead = Another device’s clock was { $span } ahead. Please set it right.
