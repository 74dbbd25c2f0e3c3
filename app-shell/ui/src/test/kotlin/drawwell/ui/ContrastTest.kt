package drawwell.ui

import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.luminance
import drawwell.ui.look.Colours
import drawwell.ui.look.HigherContrast
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** Legible by day and by night, more so where that is asked for, and by night no light in the room. */
class ContrastTest {
    private class Held(val name: String, val colours: Colours, val words: Float, val shapes: Float)

    private val all = listOf(
        Held("light", Colours.Light, WORDS, SHAPES),
        Held("night", Colours.Night, WORDS, SHAPES),
        Held("light with more contrast", HigherContrast.Light, MORE_WORDS, MORE_SHAPES),
        Held("night with more contrast", HigherContrast.Night, MORE_WORDS, MORE_SHAPES),
    )

    @Test
    fun wordsAndShapesStandOutFromTheirGround() = all.forEach {
        it.colours.tones.forEach { (part, tone) ->
            stands("${it.name} $part ink", tone.ink, tone.ground, it.words)
            stands("${it.name} $part soft", tone.soft, tone.ground, it.words)
            stands("${it.name} $part edge", tone.edge, tone.ground, it.shapes)
        }
    }

    @Test
    fun whatIsDrawnOnOtherGroundStandsOutThereToo() = all.forEach {
        val colours = it.colours
        stands("${it.name} walls of the shaft on the page", colours.shaft.edge, colours.page.ground, it.shapes)
        stands("${it.name} pain on the page", colours.careful.ink, colours.page.ground, it.shapes)
        stands("${it.name} present moment on the strip", colours.running.edge, colours.shaft.ground, it.shapes)
        stands("${it.name} feeds on the page", colours.page.ink, colours.page.ground, it.shapes)
        stands("${it.name} texture on the strip", colours.texture, colours.shaft.ground, it.shapes)
        stands("${it.name} texture on the page", colours.texture, colours.page.ground, it.shapes)
        stands("${it.name} course on the page", colours.bars.ink, colours.page.ground, it.shapes)
        stands("${it.name} edges of the ribbon on the page", colours.bars.soft, colours.page.ground, it.shapes)
        stands("${it.name} hatching and tops of bars on the page", colours.bars.edge, colours.page.ground, it.shapes)
        stands("${it.name} course in its ribbon", colours.bars.ink, colours.ribbon, it.shapes)
        stands("${it.name} ends and lines of a range on the page", colours.plain.edge, colours.page.ground, it.shapes)
        stands("${it.name} ends and lines of a range on the rim", colours.plain.edge, colours.shaft.ground, it.shapes)
        stands("${it.name} hand over the rim", colours.bars.ink, colours.shaft.ground, it.shapes)
        stands("${it.name} point over a range", colours.bars.ink, colours.plain.ground, it.shapes)
        stands("${it.name} edge of a trace over a range", colours.bars.edge, colours.plain.ground, it.shapes)
        stands("${it.name} strip in a row", colours.careful.ink, colours.sheet.ground, it.shapes)
        stands("${it.name} times on the window of sleep", colours.page.soft, colours.shaft.ground, it.words)
        stands("${it.name} the next time on the window of sleep", colours.running.ink, colours.shaft.ground, it.words)
        stands("${it.name} pegs left out, and the line, on the window of sleep", colours.page.edge, colours.shaft.ground, it.shapes)
        stands("${it.name} edge of sleep on the window of sleep", colours.bars.edge, colours.shaft.ground, it.shapes)
        stands("${it.name} edges of the ribbon on the window of sleep", colours.bars.soft, colours.shaft.ground, it.shapes)
        stands("${it.name} length of sleep in its band", colours.bars.ink, colours.bars.ground, it.words)
        stands("${it.name} code to be scanned", colours.code.ink, colours.code.ground, it.words)
        assertTrue("${it.name} code is dark on light", colours.code.ink.luminance() < colours.code.ground.luminance())
        // By night the water is told by its line and its texture, not by its fill.
        if (!colours.night) {
            stands("${it.name} water in the shaft", colours.water.ground, colours.shaft.ground, it.shapes)
            stands("${it.name} water on the page", colours.water.ground, colours.page.ground, it.shapes)
        }
    }

    /** By its ground, as a dark act on a light page is, or by the line around it. */
    @Test
    fun whatIsRaisedIsToldFromThePageWhereContrastIsAskedFor() = all.filter { it.colours.outlined }.forEach {
        it.colours.tones.forEach { (part, tone) ->
            val page = it.colours.page.ground
            stands("${it.name} $part", listOf(tone.ground, tone.edge).maxBy { mark -> ratio(mark, page) }, page, it.shapes)
        }
    }

    @Test
    fun nightLightsNoRoom() = all.filter { it.colours.night }.forEach {
        it.colours.tones.forEach { (part, tone) ->
            val where = "${it.name} $part"
            assertTrue("$where lights up", tone.ground.luminance() <= DARK)
            listOf(tone.ink, tone.soft, tone.edge).forEach { mark -> assertTrue("$where glares", mark.luminance() <= EMBER) }
            listOf(tone.ground, tone.ink, tone.soft, tone.edge).forEach { mark ->
                assertTrue("$where is not warm: blue wakes", mark.red > mark.green && mark.green >= mark.blue)
            }
        }
    }

    @Test
    fun eachIsChosenWhereItIsAskedFor() {
        val chosen = listOf(false, true).flatMap { contrast -> listOf(false, true).map { night -> Colours.of(night, contrast) } }
        assertEquals(all.map { it.colours }, chosen)
        assertEquals(listOf(false, false, true, true), chosen.map { it.outlined })
    }

    @Test
    fun everyToneIsNamedOnce() {
        val declared = Colours::class.java.declaredFields.count { it.type.simpleName == "Tone" }
        assertEquals(declared, Colours.Light.tones.size)
    }

    private fun stands(what: String, colour: Color, ground: Color, least: Float) {
        val ratio = ratio(colour, ground)
        assertTrue("$what: $ratio", ratio >= least)
    }

    private fun ratio(colour: Color, ground: Color): Float {
        val (light, dark) = listOf(colour.luminance(), ground.luminance()).sortedDescending()
        return (light + 0.05f) / (dark + 0.05f)
    }

    private companion object {
        const val WORDS = 4.5f
        const val SHAPES = 3f
        const val MORE_WORDS = 7f
        const val MORE_SHAPES = 4.5f
        const val DARK = 0.02f

        /** As bright as words may be by night. With more contrast they may be no brighter, so the ground is blacker. */
        const val EMBER = 0.37f
    }
}
