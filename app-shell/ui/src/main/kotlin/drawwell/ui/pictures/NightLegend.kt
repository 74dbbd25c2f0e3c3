package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.unit.dp
import drawwell.surface.NightStretch
import drawwell.surface.Sign
import drawwell.surface.StretchKind
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Words
import drawwell.ui.pictures.NightLanes.texture

/** What fills the time besides sleep, each by its texture: most of it is too short to hold its own name. A sign says where more is to be asked for. */
@Composable
internal fun NightLegend(stretches: List<NightStretch>, asks: Boolean) {
    val named = stretches.filter { it.kind in NightFrame.OTHERS && it.label.isNotEmpty() }.map { it.kind to it.label }.distinct()
    if (named.isEmpty() && !asks) return
    FlowRow(Modifier.fillMaxWidth(), Arrangement.spacedBy(14.dp)) {
        named.forEach { (kind, label) ->
            Row(horizontalArrangement = Arrangement.spacedBy(6.dp), verticalAlignment = Alignment.CenterVertically) {
                Swatch(kind)
                Words(label, LocalLettering.current.tick, Modifier.weight(1f, fill = false))
            }
        }
        // Where the meaning of the signs is closed, something says that there is one.
        if (asks) SignPicture(Sign.HELP, size = 18.dp)
    }
}

@Composable
private fun Swatch(kind: StretchKind) {
    val colours = LocalColours.current
    Canvas(Modifier.size(20.dp, 12.dp)) {
        val line = 1.dp.toPx()
        texture(kind, Rect(Offset(line, line), Offset(size.width - line, size.height - line)), colours)
    }
}
