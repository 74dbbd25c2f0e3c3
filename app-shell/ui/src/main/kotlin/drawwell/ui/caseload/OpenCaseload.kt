package drawwell.ui.caseload

import drawwell.surface.Clock
import drawwell.surface.DeskInterface

/** A caseload that is open, and the clock that goes with it. */
class OpenCaseload(
    val core: DeskInterface,
    val now: () -> Clock,
)
