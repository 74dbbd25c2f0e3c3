package drawwell.ui

import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.assertContentDescriptionEquals
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performScrollTo
import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.surface.SheetPart
import drawwell.surface.SheetScreen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** The visit sheet is seen as it goes out; each part is left out with one tap, and goes out as a PDF with one more. */
abstract class SheetContract : ShellContract() {
    @Test
    fun isTwoTapsFromTheFootAndLeadsBack() {
        val stage = begun()
        stage.tap("place-visit")
        rule.onNodeWithTag("open-sheet").performScrollTo()
        stage.tap("open-sheet")
        assertEquals(2, stage.gestures)
        assertTrue(stage.screen is Screen.Sheet)
        stage.tap("back")
        assertTrue(stage.screen is Screen.List)
    }

    @Test
    fun aPartIsLeftOutWithOneTapAndTakenInWithAnother() {
        val stage = full()
        val before = part(stage)
        rule.onNodeWithTag("section-supply").performScrollTo()
        rule.onNodeWithTag(before.leave.key).performScrollTo()
        stage.tap(before.leave.key)
        assertTrue(part(stage).out)
        rule.onNodeWithTag("section-supply").assertDoesNotExist()
        rule.onNodeWithTag(before.leave.key).performScrollTo()
        stage.tap(before.leave.key)
        assertEquals(before, part(stage))
        rule.onNodeWithTag("section-supply").assertExists()
    }

    @Test
    fun everyPictureIsToldAsItGoesOut() {
        val sheet = sheet(full())
        val sections = sheet.parts.flatMap { it.sections }
        val weeks = sections.filter { it.weeks != null }
        val plots = sections.filter { it.plot != null }
        assertTrue("pictures: ${weeks.size} and ${plots.size}", weeks.isNotEmpty())
        weeks.forEach { told("weeks-${it.key}", it.weeks!!.spoken) }
        plots.forEach { told("plot-${it.key}", it.plot!!.spoken) }
        told("sheet-intro", "${sheet.spoken} ${sheet.intro}")
    }

    @Test
    fun allThatIsTouchedIsLargeEnough() {
        val stage = full()
        val touched = rule.onAllNodes(touchable).fetchSemanticsNodes()
        assertTrue("only ${touched.size}", touched.size > 8)
        touched.forEach { node ->
            val place = stage.place(node)
            val key = node.config.getOrNull(SemanticsProperties.TestTag) ?: "untagged"
            assertTrue("$key is too small: $place", place.width >= 55.9f && place.height >= 55.9f)
        }
    }

    @Test
    fun itGoesOutAsAPdfUnderTheThumb() {
        val stage = full()
        val file = folder.root.resolve("sheet.pdf")
        stage.host.file = file
        val button = stage.place(rule.onNodeWithTag("hand-over-sheet").fetchSemanticsNode())
        assertTrue("$button is not under the thumb", button.top >= Stage.TALL * 0.4f)
        stage.tap("hand-over-sheet")
        assertEquals("%PDF-", file.inputStream().use { String(it.readNBytes(5), Charsets.US_ASCII) })
    }

    private fun full(): Stage = begun().apply {
        SomeDays.on(this)
        say(Event.Go(Place.Visit))
        say(Event.Go(Place.Sheet))
    }

    private fun sheet(stage: Stage): SheetScreen = (stage.screen as Screen.Sheet).sheet

    private fun part(stage: Stage): SheetPart = sheet(stage).parts.single { it.key == "supply" }

    private fun told(tag: String, spoken: String) {
        assertTrue("$tag is not told", spoken.isNotBlank())
        rule.onNodeWithTag(tag).assertContentDescriptionEquals(spoken)
    }

    private companion object {
        val touchable = SemanticsMatcher("can be touched") { it.config.contains(SemanticsActions.OnClick) }
    }
}
