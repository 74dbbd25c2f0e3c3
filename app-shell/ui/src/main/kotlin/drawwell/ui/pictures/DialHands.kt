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

/**
 * The hands of a dial: each a wedge as wide as its error, a line where it points, and a bead with its label on the line.
 * Two that are named, as left and right, each have a ring of their own: they never lie on one another.
 */
internal class DialHands(
    private val hands: List<DialHand>,
    private val face: DialFace,
    private val measurer: TextMeasurer,
    private val style: TextStyle,
    private val colours: Colours,
) {
    fun DrawScope.draw() {
        hands.forEachIndexed { place, hand -> wedge(hand, ring(place)) }
        hands.withIndex().reversed().forEach { (place, hand) -> needle(hand, ring(place), single = place % 2 == 0) }
        drawCircle(colours.page.ground, HUB.toPx() + 2.dp.toPx(), face.middle)
        drawCircle(colours.bars.ink, HUB.toPx(), face.middle)
        beads().forEach { bead(it) }
    }

    /** From where to where along the radius a hand lies. */
    private class Ring(val from: Float, val to: Float)

    private val apart = hands.size == 2 && hands.all { it.label.isNotEmpty() }

    private fun ring(place: Int) = if (!apart) WHOLE else if (place == 0) OUTER else INNER

    private fun DrawScope.wedge(hand: DialHand, ring: Ring) {
        val from = face.degrees(hand.low)
        val sweep = face.degrees(hand.high) - from
        val spread = Path().apply {
            arcTo(face.circle(face.within * ring.to), from, sweep, true)
            if (ring.from > 0) arcTo(face.circle(face.within * ring.from), from + sweep, -sweep, false) else lineTo(face.middle.x, face.middle.y)
            close()
        }
        drawPath(spread, colours.water.ground, alpha = VEIL)
        drawPath(spread, colours.bars.soft, style = Stroke(1.dp.toPx()))
    }

    /** A second one is a double line, so that two which lie on one another are still two. */
    private fun DrawScope.needle(hand: DialHand, ring: Ring, single: Boolean) {
        val root = face.point(hand.at, face.within * ring.from)
        val tip = face.point(hand.at, if (ring.to < 1) face.within * ring.to else face.radius + 1.dp.toPx())
        val wide = if (single) 3.dp else 5.dp
        drawLine(colours.page.ground, root, tip, (wide + 2.dp).toPx(), StrokeCap.Butt)
        drawLine(colours.bars.ink, root, tip, wide.toPx(), StrokeCap.Butt)
        if (!single) drawLine(colours.page.ground, root, tip, 2.dp.toPx(), StrokeCap.Butt)
    }

    private class Bead(val place: Rect, val words: TextLayoutResult, val single: Boolean)

    /** As far out as there is room; of two that would touch the later one moves in. */
    private fun DrawScope.beads(): List<Bead> {
        val beads = mutableListOf<Bead>()
        hands.forEachIndexed { place, hand ->
            if (hand.label.isNotEmpty()) beads += bead(hand, ring(place), place % 2 == 0, beads)
        }
        return beads
    }

    private fun DrawScope.bead(hand: DialHand, ring: Ring, single: Boolean, others: List<Bead>): Bead {
        val most = (face.within * BEAD).toSp()
        val lettering = if (style.fontSize.toPx() > most.toPx()) style.copy(fontSize = most, lineHeight = most) else style
        val words = measurer.measure(hand.label, lettering.copy(color = if (single) colours.page.ground else colours.bars.ink))
        val tall = words.size.height + 4.dp.toPx()
        val size = Size(maxOf(tall, words.size.width + 12.dp.toPx()), tall)
        val step = 2.dp.toPx()
        var radius = face.within * ring.to - size.maxDimension / 2 - 3.dp.toPx()
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
        val WHOLE = Ring(0f, 1f)
        val OUTER = Ring(0.62f, 1f)
        val INNER = Ring(0.22f, 0.58f)
    }
}
