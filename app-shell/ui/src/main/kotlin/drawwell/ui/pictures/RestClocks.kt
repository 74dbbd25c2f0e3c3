package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.Arc
import drawwell.surface.Rest
import drawwell.ui.look.Colours
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.OneLine
import kotlin.math.PI
import kotlin.math.cos
import kotlin.math.min
import kotlin.math.sin

/** How long each side has rested, on the face of a clock: left where left is, right where right is. */
@Composable
internal fun RestClocks(rests: List<Rest>, modifier: Modifier = Modifier) {
    Sides(modifier) {
        rests.forEach { RestClock(it, Modifier.weight(1f)) }
    }
}

@Composable
private fun RestClock(rest: Rest, modifier: Modifier) {
    val colours = LocalColours.current
    val lettering = LocalLettering.current
    Column(
        modifier.clearAndSetSemantics {
            contentDescription = rest.spoken
            testTag = "rest-${rest.part.name.lowercase()}"
        },
        Arrangement.spacedBy(6.dp),
    ) {
        Canvas(Modifier.weight(1f).fillMaxWidth()) { face(rest.arc, colours) }
        Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(8.dp, Alignment.CenterHorizontally), Alignment.CenterVertically) {
            OneLine(rest.label, lettering.label, soft = true)
            OneLine(rest.text, lettering.action)
        }
    }
}

/** Twelve marks, the time since as an arc, and a hand at now. */
private fun DrawScope.face(arc: Arc?, colours: Colours) {
    val pen = 12.dp.toPx()
    val radius = min(size.width, size.height) / 2 - pen
    if (radius <= 0f) return
    val corner = Offset(center.x - radius, center.y - radius)
    val whole = Size(radius * 2, radius * 2)
    drawArc(colours.shaft.ground, 0f, 360f, false, corner, whole, style = Stroke(pen))
    repeat(12) {
        val inner = radius - pen * if (it % 3 == 0) 1.5f else 1.1f
        drawLine(colours.page.edge, at(it / 12f, inner), at(it / 12f, radius - pen * 0.7f), 2.dp.toPx(), StrokeCap.Round)
    }
    if (arc == null) return
    val turns = (arc.to - arc.from).coerceIn(0f, 1f)
    drawArc(colours.water.ground, arc.from * 360f - 90f, turns * 360f, false, corner, whole, style = Stroke(pen, cap = StrokeCap.Butt))
    drawLine(colours.page.ink, center, at(arc.to, radius - pen), 4.dp.toPx(), StrokeCap.Round)
    drawCircle(colours.page.ink, 5.dp.toPx(), center)
    drawCircle(colours.page.ink, pen * 0.72f, at(arc.to, radius))
}

/** A place on the face, so many turns from its top. */
private fun DrawScope.at(turns: Float, radius: Float): Offset {
    val angle = turns * 2 * PI
    return Offset(center.x + radius * sin(angle).toFloat(), center.y - radius * cos(angle).toFloat())
}
