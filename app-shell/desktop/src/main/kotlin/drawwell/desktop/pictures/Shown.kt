package drawwell.desktop.pictures

import drawwell.surface.Screen
import drawwell.ui.Told

/** A screen on the walk, and what was said over it. */
internal data class Shown(val screen: Screen, val trouble: Told? = null)
