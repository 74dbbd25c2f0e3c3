package drawwell.ui.pictures

import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.graphics.drawscope.clipRect
import androidx.compose.ui.unit.dp
import drawwell.surface.NightStretch
import drawwell.surface.StretchKind
import drawwell.ui.look.Colours

/** Under the line of the pegs: sleep as calm bands with their length in them; beneath it what else fills the time, each kind by its own texture. */
internal object NightLanes {
    fun DrawScope.lanes(stretches: List<NightStretch>, frame: NightFrame, colours: Colours) {
        stretches.filter { it.kind == StretchKind.SLEEP }.forEach { sleep(it, frame, colours) }
        stretches.filter { it.kind in NightFrame.OTHERS }.forEach { other(it, frame, colours) }
    }

    private fun DrawScope.sleep(stretch: NightStretch, frame: NightFrame, colours: Colours) {
        val area = frame.sleep.part(stretch, 1.5.dp.toPx())
        val corner = CornerRadius(minOf(6.dp.toPx(), area.width / 2))
        drawRoundRect(colours.bars.ground, area.topLeft, area.size, corner)
        drawRoundRect(colours.bars.edge, area.topLeft, area.size, corner, Stroke(1.dp.toPx()))
        frame.words.run { amid(stretch.label, area, colours.bars.ink, null) }
    }

    private fun DrawScope.other(stretch: NightStretch, frame: NightFrame, colours: Colours) {
        val area = frame.others.part(stretch, 1.dp.toPx())
        texture(stretch.kind, area, colours)
        val ground = if (stretch.kind == StretchKind.WANTED) colours.plain else colours.page
        frame.words.run { amid(stretch.label, area, ground.ink, ground.ground) }
    }

    /** Slanting lines where no session can be, an open field where one is to be, rings for a feed. */
    fun DrawScope.texture(kind: StretchKind, area: Rect, colours: Colours) {
        clipRect(area.left, area.top, area.right, area.bottom) {
            when (kind) {
                StretchKind.BUSY -> slanted(area, colours)
                StretchKind.WANTED -> drawRect(colours.plain.ground, area.topLeft, area.size)
                else -> rings(area, colours)
            }
        }
        drawRect(colours.plain.edge, area.topLeft, area.size, style = Stroke(1.dp.toPx()))
    }

    private fun DrawScope.slanted(area: Rect, colours: Colours) {
        var x = area.left - area.height
        while (x < area.right) {
            drawLine(colours.plain.edge, Offset(x, area.bottom), Offset(x + area.height, area.top), 1.dp.toPx())
            x += 6.dp.toPx()
        }
    }

    /** As a feed is drawn on a day, one beside the other. */
    private fun DrawScope.rings(area: Rect, colours: Colours) {
        val apart = 9.dp.toPx()
        val many = maxOf(1, (area.width / apart).toInt())
        repeat(many) { place ->
            val x = area.left + (place + 0.5f) * area.width / many
            drawCircle(colours.plain.edge, 2.5.dp.toPx(), Offset(x, area.center.y), style = Stroke(1.dp.toPx(), cap = StrokeCap.Round))
        }
    }

    private fun Rect.part(stretch: NightStretch, gap: Float): Rect {
        val from = left + stretch.from * width + gap
        return Rect(from, top, maxOf(left + stretch.to * width - gap, from + gap), bottom)
    }
}
