package drawwell.ui.pictures

import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.text.TextLayoutResult
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.unit.dp
import drawwell.surface.DialHand
import drawwell.ui.look.Colours

/** The hands of a dial: each a wedge as wide as its error, a line where it points, and a bead with its label on the line. */
internal class DialHands(
    private val hands: List<DialHand>,
    private val face: DialFace,
    private val measurer: TextMeasurer,
    private val style: TextStyle,
    private val colours: Colours,
) {
    fun DrawScope.draw() {
        hands.forEach { wedge(it) }
        hands.withIndex().reversed().forEach { (place, hand) -> needle(hand, single = place % 2 == 0) }
        drawCircle(colours.page.ground, HUB.toPx() + 2.dp.toPx(), face.middle)
        drawCircle(colours.bars.ink, HUB.toPx(), face.middle)
        beads().forEach { bead(it) }
    }

    private fun DrawScope.wedge(hand: DialHand) {
        val spread = Path().apply {
            moveTo(face.middle.x, face.middle.y)
            arcTo(face.circle(face.within), face.degrees(hand.low), face.degrees(hand.high) - face.degrees(hand.low), false)
            close()
        }
        drawPath(spread, colours.water.ground, alpha = VEIL)
        drawPath(spread, colours.bars.soft, style = Stroke(1.dp.toPx()))
    }

    /** A second one is a double line, so that two which lie on one another are still two. */
    private fun DrawScope.needle(hand: DialHand, single: Boolean) {
        val tip = face.point(hand.at, face.radius + 1.dp.toPx())
        val wide = if (single) 3.dp else 5.dp
        drawLine(colours.page.ground, face.middle, tip, (wide + 2.dp).toPx(), StrokeCap.Butt)
        drawLine(colours.bars.ink, face.middle, tip, wide.toPx(), StrokeCap.Butt)
        if (!single) drawLine(colours.page.ground, face.middle, tip, 2.dp.toPx(), StrokeCap.Butt)
    }

    private class Bead(val place: Rect, val words: TextLayoutResult, val single: Boolean)

    /** As far out as there is room; of two that would touch the later one moves in. */
    private fun DrawScope.beads(): List<Bead> {
        val beads = mutableListOf<Bead>()
        hands.forEachIndexed { place, hand ->
            if (hand.label.isNotEmpty()) beads += bead(hand, place % 2 == 0, beads)
        }
        return beads
    }

    private fun DrawScope.bead(hand: DialHand, single: Boolean, others: List<Bead>): Bead {
        val most = (face.within * BEAD).toSp()
        val lettering = if (style.fontSize.toPx() > most.toPx()) style.copy(fontSize = most, lineHeight = most) else style
        val words = measurer.measure(hand.label, lettering.copy(color = if (single) colours.page.ground else colours.bars.ink))
        val tall = words.size.height + 4.dp.toPx()
        val size = Size(maxOf(tall, words.size.width + 12.dp.toPx()), tall)
        val step = 2.dp.toPx()
        var radius = face.within - size.maxDimension / 2 - 3.dp.toPx()
        fun at(radius: Float) = face.point(hand.at, radius).let { Rect(Offset(it.x - size.width / 2, it.y - size.height / 2), size) }
        while (radius > tall && others.any { it.place.inflate(2.dp.toPx()).overlaps(at(radius)) }) radius -= step
        return Bead(at(radius), words, single)
    }

    private fun DrawScope.bead(bead: Bead) {
        val corner = CornerRadius(if (bead.single) bead.place.height / 2 else 4.dp.toPx())
        val halo = bead.place.inflate(2.dp.toPx())
        drawRoundRect(colours.page.ground, halo.topLeft, halo.size, CornerRadius(corner.x + 2.dp.toPx()))
        drawRoundRect(if (bead.single) colours.bars.ink else colours.page.ground, bead.place.topLeft, bead.place.size, corner)
        if (!bead.single) drawRoundRect(colours.bars.ink, bead.place.topLeft, bead.place.size, corner, Stroke(2.dp.toPx()))
        val middle = bead.place.center
        drawText(bead.words, topLeft = Offset(middle.x - bead.words.size.width / 2f, middle.y - bead.words.size.height / 2f))
    }

    private companion object {
        const val VEIL = 0.4f

        /** How tall the words on a bead may be, of the length of a hand: so that two have room on one. */
        const val BEAD = 0.2f
        val HUB = 5.dp
    }
}
