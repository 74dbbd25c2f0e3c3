package drawwell.ui.caseload

import drawwell.surface.DeskEvent
import drawwell.surface.Event

/** What is done at the desk by this event; none where it is an event of a family's record. */
val Event.onDesk: DeskEvent? get() = (this as? Event.OnDesk)?.event
