package drawwell.ui.parts

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.alpha
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures

/** How wide each of these has to be, that all may be alike. */
@Composable
internal fun figureWidth(actions: List<Action>): Dp {
    val measurer = rememberTextMeasurer()
    val lettering = LocalLettering.current
    val widest = actions.maxOfOrNull { maxOf(measurer.measure(it.label, lettering.value).size.width, measurer.measure(it.detail, lettering.tick).size.width) } ?: 0
    return (with(LocalDensity.current) { widest.toDp() } + INSET * 2).coerceAtLeast(Measures.target)
}

/** An action that is a figure, large enough to be read from where a gauge is held. */
@Composable
internal fun FigureButton(action: Action, send: (Event) -> Unit, modifier: Modifier = Modifier) {
    val tone = LocalColours.current.of(action)
    Ground(
        tone,
        modifier.alpha(if (action.open) 1f else 0.45f).touch(action, tone.ink, send),
        Rounded,
        edged = true,
        align = Alignment.Center,
    ) {
        Column(Modifier.padding(horizontal = INSET, vertical = 8.dp), horizontalAlignment = Alignment.CenterHorizontally) {
            OneLine(action.label, LocalLettering.current.value)
            OneLine(action.detail, LocalLettering.current.tick, soft = true)
        }
    }
}

private val INSET = 8.dp
