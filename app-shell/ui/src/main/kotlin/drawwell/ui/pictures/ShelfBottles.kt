package drawwell.ui.pictures

import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.unit.dp
import drawwell.surface.ShelfBottle
import drawwell.ui.look.Colours

/** A bottle as full as it is; dotted where nobody knows; dots over one to be used soon, crossed out past its time. */
internal fun DrawScope.bottle(bottle: ShelfBottle, colours: Colours) {
    val line = 1.5.dp.toPx()
    val neck = Rect(size.width * 0.32f, line, size.width * 0.68f, size.height * 0.2f)
    val body = Rect(line, neck.bottom, size.width - line, size.height - line)
    val round = CornerRadius(6.dp.toPx())
    bottle.full?.let { full ->
        val tall = body.height * full.coerceIn(0f, 1f)
        drawRoundRect(colours.water.ground, Offset(body.left, body.bottom - tall), Size(body.width, tall), round)
    }
    val dotted = PathEffect.dashPathEffect(floatArrayOf(2.dp.toPx(), 3.dp.toPx())).takeIf { bottle.full == null }
    val edge = if (bottle.past) colours.page.edge else colours.page.ink
    drawRect(edge, neck.topLeft, neck.size, style = Stroke(line, pathEffect = dotted))
    drawRoundRect(edge, body.topLeft, body.size, round, Stroke(line, pathEffect = dotted))
    if (bottle.soon) {
        repeat(3) { drawCircle(colours.page.ink, 2.dp.toPx(), Offset(body.left + body.width * (it + 1) / 4f, body.top + body.height * 0.2f)) }
    }
    if (bottle.past) drawLine(colours.page.ink, body.bottomLeft, body.topRight, line)
}
