package drawwell.desktop.pictures

import drawwell.surface.Appearance
import drawwell.surface.CaseloadScreen
import drawwell.surface.Frame
import drawwell.surface.Screen

/** The same window in another look. */
internal fun CaseloadScreen.dressed(look: Appearance) = copy(families = families.dressed(look), beside = beside.dressed(look))

/** The same screen in another look. */
internal fun Screen.dressed(look: Appearance): Screen {
    fun Frame.dressed() = copy(look = look)
    return when (this) {
        is Screen.Welcome -> copy(frame = frame.dressed())
        is Screen.Question -> copy(frame = frame.dressed())
        is Screen.Ready -> copy(frame = frame.dressed())
        is Screen.Running -> copy(frame = frame.dressed())
        is Screen.Amounts -> copy(frame = frame.dressed())
        is Screen.Day -> copy(frame = frame.dressed())
        is Screen.Tonight -> copy(frame = frame.dressed())
        is Screen.Supply -> copy(frame = frame.dressed())
        is Screen.Findings -> copy(frame = frame.dressed())
        is Screen.Check -> copy(frame = frame.dressed())
        is Screen.Card -> copy(frame = frame.dressed())
        is Screen.Form -> copy(frame = frame.dressed())
        is Screen.List -> copy(frame = frame.dressed())
        is Screen.Sheet -> copy(frame = frame.dressed())
    }
}
