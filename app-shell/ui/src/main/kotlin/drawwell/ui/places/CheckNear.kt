package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalLayoutDirection
import androidx.compose.ui.unit.dp
import drawwell.surface.CheckScreen
import drawwell.surface.Event
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalReading
import drawwell.ui.look.Measures
import drawwell.ui.parts.FigureButton
import drawwell.ui.parts.figureWidth
import drawwell.ui.parts.Words

/** Figures near the last one, large: one tap writes one down. They run as on a rule, in either hand. */
@Composable
internal fun CheckNear(check: CheckScreen, send: (Event) -> Unit) {
    if (check.near.isEmpty()) return
    Words(check.nearLabel, LocalLettering.current.label, soft = true)
    BoxWithConstraints {
        val each = figureWidth(check.near) + Measures.apart
        val abreast = ((maxWidth + Measures.apart) / each).toInt().coerceAtLeast(1)
        val rows = (check.near.size + abreast - 1) / abreast
        Column(verticalArrangement = Arrangement.spacedBy(Measures.apart)) {
            check.near.chunked((check.near.size + rows - 1) / rows).forEach { row ->
                CompositionLocalProvider(LocalLayoutDirection provides LocalReading.current) {
                    Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Measures.apart)) {
                        row.forEach { FigureButton(it, send, Modifier.weight(1f).heightIn(min = 72.dp)) }
                    }
                }
            }
        }
    }
}
