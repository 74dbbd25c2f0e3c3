### The consultant's desk.

## The consultant's desk

caseload-title = Families
caseload-count = { $count ->
    [one] One family
   *[other] { $count } families
}
caseload-found = { $seen } of { $count } families
caseload-as-shared = Each as last shared:
caseload-none-found = No family fits that. Clear the name, or choose All.
caseload-find-name = Find a family
caseload-find-name-hint = Find by name
caseload-find-reason = Show only
caseload-find-all = All
caseload-find-caution = Cautions
caseload-find-record = Damaged records
caseload-find-pump = Pump below range
caseload-find-over = Settled cautions
caseload-find-gap = Nothing logged
caseload-find-visit = Visit due
caseload-needs-a-look = Needs a look first
caseload-others = Nothing needs a look
caseload-none = No family has shared a record yet. Give out your card, and open the files that come back.
caseload-pick = Open a file
caseload-pick-detail = Sealed or plain, or drag it here
caseload-menu = Files
caseload-watch = Watch a folder for new files…
caseload-leave-folder = Stop watching “{ $folder }”
caseload-desk = Your desk
caseload-waits = { $count ->
    [one] One file needs its passphrase
   *[other] { $count } files need their passphrases
}
caseload-waits-detail = Sealed with words the family gives you
caseload-desk-detail = Card, gauges, pumps, flanges
as-of = As shared { $date }, { $time }. You can read it, not change it.
case-notes = Notes, next visit, plan
case-notes-detail = Your own notes on this family
case-no-name = No name yet
case-shared = { $date }, { $time }
case-shared-spoken = As shared { $date }, { $time }
case-never-shared = Not shared yet
case-subtitle = Your own notes on this family
case-open = Open the record
write-plan = Write a plan
remove-family = Remove for good
remove-family-detail = First shows what goes and what stays
removing-caption = This removes the family from this computer for good.
removing-record = The record, and all copies of it here
removing-written = What you wrote: notes, the next visit, plans
removing-files = Files you received or sent, wherever you saved them
removing-family = The family’s own record on their phone
removing-do = Remove
reason-salvaged = The record here was damaged. We kept what we could read. Ask the family to share again
reason-cannot-be-read = We can’t read the record here. Open its file again
reason-now = Emergency
reason-today = Today
reason-soon = Soon
reason-consultant = For you
reason-caution = { $urgency }: { $what }
reason-was = { $what }: { $became }
reason-pump-below = { $pump } pulls below its range
reason-gap = Nothing logged since { $date }: { $span }
reason-visit-today = Visit today
reason-visit-tomorrow = Visit tomorrow
reason-visit-on = Visit on { $date }
reason-visit-past = Visit was due { $date }
desk-title = Your desk
desk-subtitle = Set up once, used for every family
desk-intro = If a family’s pump or gauge has the same name as one here but no range, it uses the range from here.
desk-own = You
desk-stock = Stock, units, rules
desk-rules = When a family needs a look
desk-rules-detail = After a gap in the record, or before a visit
own-card = Your card
own-card-detail = Give it to each family once
own-card-how = The family scans this with the phone’s camera, or uses the line. Then read the words to each other.
own-card-spoken = A code with your public keys. The line below says the same.
own-words = Words to compare
own-line = The same as a line
own-name = Name on it
own-name-none = Add your name
desk-settings = Flanges in stock, units, look
desk-settings-detail = Sizes you can offer
trouble-only-read = This is a family’s own record. You can only read it here.
trouble-only-read-do = Write it in a plan instead.
trouble-invented = This is the invented family’s record. It was not changed.
trouble-invented-do = Go back to your own record. Then open the file or scan the code again.
trouble-only-on-a-desk = Only the consultant’s program can do that.
trouble-only-on-a-desk-do = Nothing was changed.
trouble-cannot-erase = Some of it could not be removed.
trouble-cannot-erase-do = Close other programs that have it open, and try again.
