package drawwell.ui

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.WindowInsets
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.safeDrawing
import androidx.compose.foundation.layout.widthIn
import androidx.compose.foundation.layout.windowInsetsPadding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.key
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import drawwell.surface.Event
import drawwell.surface.Screen
import drawwell.ui.look.LocalColours
import drawwell.ui.look.Measures
import drawwell.ui.look.Theme
import drawwell.ui.look.Typefaces
import drawwell.ui.parts.Ground
import drawwell.ui.parts.Pane
import drawwell.ui.places.AmountsView
import drawwell.ui.places.CardView
import drawwell.ui.places.CheckView
import drawwell.ui.places.DayView
import drawwell.ui.places.FindingsView
import drawwell.ui.places.FormView
import drawwell.ui.places.ListView
import drawwell.ui.places.QuestionView
import drawwell.ui.places.ReadyView
import drawwell.ui.places.RunningView
import drawwell.ui.places.SheetView
import drawwell.ui.places.SupplyView
import drawwell.ui.places.TonightView
import drawwell.ui.places.WelcomeView

/** Draws one screen as the core gave it, and says what was done on it. */
@Composable
fun ScreenView(
    screen: Screen,
    typefaces: Typefaces,
    reducedMotion: Boolean,
    higherContrast: Boolean = false,
    trouble: Told? = null,
    dismissTrouble: () -> Unit = {},
    send: (Event) -> Unit,
) {
    val frame = screen.frame()
    Theme(frame.look, typefaces, reducedMotion, higherContrast) {
        Ground(LocalColours.current.page, Modifier.fillMaxSize(), align = Alignment.TopCenter) {
            Box(Modifier.widthIn(max = Measures.widest).windowInsetsPadding(WindowInsets.safeDrawing)) {
                val pane = Pane(frame, trouble, dismissTrouble, send)
                key(screen.sameness()) { Placed(screen, pane) }
            }
        }
    }
}

/** A screen of any kind, where there is ground and a look already. */
@Composable
internal fun Placed(screen: Screen, pane: Pane) = when (screen) {
    is Screen.Welcome -> WelcomeView(pane, screen.welcome)
    is Screen.Question -> QuestionView(pane, screen.question)
    is Screen.Ready -> ReadyView(pane, screen.ready)
    is Screen.Running -> RunningView(pane, screen.running)
    is Screen.Amounts -> AmountsView(pane, screen.amounts)
    is Screen.Day -> DayView(pane, screen.day)
    is Screen.Tonight -> TonightView(pane, screen.tonight)
    is Screen.Supply -> SupplyView(pane, screen.supply)
    is Screen.Findings -> FindingsView(pane, screen.findings)
    is Screen.Check -> CheckView(pane, screen.check)
    is Screen.Card -> CardView(pane, screen.card)
    is Screen.Form -> FormView(pane, screen.form)
    is Screen.List -> ListView(pane, screen.list)
    is Screen.Sheet -> SheetView(pane, screen.sheet)
}
