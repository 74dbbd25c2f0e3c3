package drawwell.ui.pictures

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.text.TextLayoutResult
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import drawwell.surface.DialPicture
import drawwell.ui.look.Colours
import drawwell.ui.look.Lettering

/** The figure of a dial and its unit, in the part that no sweep takes; as large as the dial allows, whatever the type. */
internal fun DrawScope.dialFigure(dial: DialPicture, face: DialFace, measurer: TextMeasurer, lettering: Lettering, colours: Colours) {
    fun fit(text: String, style: TextStyle, most: Float): TextLayoutResult {
        val words = measurer.measure(text, style)
        if (words.size.width <= most) return words
        return measurer.measure(text, style.copy(fontSize = style.fontSize * (most / words.size.width), lineHeight = style.fontSize))
    }
    val large = (face.radius * FIGURE).toSp()
    val figure = fit(dial.figure, lettering.amount.copy(fontSize = large, lineHeight = large, color = colours.page.ink), face.radius * WIDE)
    val least = minOf(lettering.label.fontSize.toPx(), figure.layoutInput.style.fontSize.toPx() * UNIT).toSp()
    val unit = fit(dial.unit, lettering.label.copy(fontSize = least, color = colours.page.soft), face.radius * WIDE)
    val top = face.middle.y + face.radius * BELOW
    val from = Offset(face.middle.x - figure.size.width / 2f, top)
    drawText(figure, topLeft = from)
    drawText(unit, topLeft = Offset(face.middle.x - unit.size.width / 2f, top + figure.size.height))
}

/** Of the dial's radius: how tall the figure is, how wide it may become, how far under the middle it begins. Of the figure: its unit at most. */
private const val FIGURE = 0.42f
private const val WIDE = 1.25f
private const val BELOW = 0.2f
private const val UNIT = 0.8f
