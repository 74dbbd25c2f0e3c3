package drawwell.ui

import drawwell.surface.Frame
import drawwell.surface.Screen

/** What surrounds this screen. */
fun Screen.frame(): Frame = when (this) {
    is Screen.Welcome -> frame
    is Screen.Question -> frame
    is Screen.Ready -> frame
    is Screen.Running -> frame
    is Screen.Amounts -> frame
    is Screen.Day -> frame
    is Screen.Tonight -> frame
    is Screen.Supply -> frame
    is Screen.Findings -> frame
    is Screen.Check -> frame
    is Screen.Card -> frame
    is Screen.Form -> frame
    is Screen.List -> frame
    is Screen.Sheet -> frame
}

/** Two screens of one sameness are one place that moved on: it keeps its scroll. */
internal fun Screen.sameness(): String = when (this) {
    is Screen.Welcome -> "welcome"
    is Screen.Question -> "question ${question.headline}"
    is Screen.Ready -> "ready"
    is Screen.Running -> "running"
    is Screen.Amounts -> "amounts ${amounts.session}"
    is Screen.Day -> "day ${frame.title} ${frame.subtitle}"
    is Screen.Tonight -> "tonight"
    is Screen.Supply -> "supply"
    is Screen.Findings -> "findings ${frame.title} ${frame.subtitle}"
    is Screen.Check -> "check"
    is Screen.Card -> "card"
    is Screen.Form -> "form ${form.id}"
    is Screen.List -> "list ${frame.title}"
    is Screen.Sheet -> "sheet"
}
