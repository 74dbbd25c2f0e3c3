### The consultant's desk.

## The consultant's desk

caseload-title = Families
caseload-count = { $count ->
    [one] One family
   *[other] { $count } families
}
caseload-needs-a-look = Needs a look first
caseload-others = Nothing asks for a look
caseload-none = No family has shared a record yet. Hand your card on, and open what comes back.
caseload-pick = Open a file
caseload-pick-detail = Sealed or plain, or drag it here
caseload-menu = Files
caseload-watch = Watch a folder for new files…
caseload-leave-folder = Stop watching “{ $folder }”
caseload-desk = Your desk
caseload-waits = { $count ->
    [one] A file waits for its passphrase
   *[other] { $count } files wait for their passphrases
}
caseload-waits-detail = Sealed with words that the family tells you
caseload-desk-detail = Card, gauges, pumps, flanges
as-of = As it was shared { $date }, { $time }. Only to be read.
case-notes = Notes, next visit, plan
case-notes-detail = What you keep of this family
case-no-name = No name yet
case-shared = As shared { $date }, { $time }
case-never-shared = Never shared
case-subtitle = What you keep of this family
case-open = Open its record
write-plan = Write a plan
remove-family = Remove for good
remove-family-detail = Says first what goes and what remains
removing-caption = This family goes from this machine for good.
removing-record = Its record, and all copies of it here
removing-written = What you wrote of it: notes, the next visit, plans
removing-files = Files that came or went, wherever you saved them
removing-family = The family’s own record on its phone
removing-do = Remove it
reason-salvaged = The record here was damaged; what could be read was kept. Ask the family to share again
reason-cannot-be-read = The record here can’t be read; open its file again
reason-now = Emergency
reason-today = Today
reason-soon = Soon
reason-consultant = For you
reason-caution = { $urgency }: { $what }
reason-was = { $what }: { $became }
reason-pump-below = { $pump } pulls below its range
reason-gap = Nothing written down since { $date }: { $span }
reason-visit-today = Visit today
reason-visit-tomorrow = Visit tomorrow
reason-visit-on = Visit on { $date }
reason-visit-past = Visit was due { $date }
desk-title = Your desk
desk-subtitle = Kept once, used for every family
desk-intro = A pump or gauge of the same name in a family’s record takes its range from here where its own says none.
desk-own = You
desk-stock = Stock, units, rules
desk-rules = When a family needs a look
desk-rules-detail = A gap in the record, a visit that is near
own-card = Your card
own-card-detail = Hand it to a family once
own-card-how = The family scans this with the phone’s camera, or takes the line. Then read the words to each other.
own-card-spoken = A code that holds your public keys. The line below says the same.
own-words = Words to compare
own-line = The same as a line
own-name = Name on it
own-name-none = Set your name
desk-settings = Flanges in stock, units, look
desk-settings-detail = Sizes that you can offer
trouble-only-read = This is a family’s own record. It can only be read here.
trouble-only-read-do = Write it in a plan instead.
trouble-invented = This is the invented family’s record, and it was left as it is.
trouble-invented-do = Go back to your own record, then open the file or scan the code again.
trouble-only-on-a-desk = That belongs to the consultant’s program.
trouble-only-on-a-desk-do = Nothing was changed.
trouble-cannot-erase = Some of it could not be removed.
trouble-cannot-erase-do = Close other programs that have it open, and try again.
