package drawwell.desktop.pictures

import drawwell.surface.CaseloadScreen
import drawwell.surface.Screen
import drawwell.ui.Told

/** The consultant's window on the walk, and what was said over it. */
internal data class ShownAtDesk(val caseload: CaseloadScreen, val trouble: Told? = null)

/** A screen on the walk, and what was said over it. */
internal data class Shown(val screen: Screen, val trouble: Told? = null)
