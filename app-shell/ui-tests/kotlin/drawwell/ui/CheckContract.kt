package drawwell.ui

import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.assert
import androidx.compose.ui.test.assertContentDescriptionEquals
import androidx.compose.ui.test.assertIsNotEnabled
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performImeAction
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performTextClearance
import androidx.compose.ui.test.performTextInput
import androidx.compose.ui.text.AnnotatedString
import drawwell.surface.Screen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** What a check with a gauge costs the thumb, on the real core. */
abstract class CheckContract : ShellContract() {
    @Test
    fun sixReadingsCostEightTaps() {
        val stage = pump()
        tapped(stage, "check")
        rule.onNodeWithTag("done").assertIsNotEnabled()
        repeat(6) { stage.tap(check(stage).near[2].key) }
        assertEquals(6, check(stage).readings.rows.size)
        stage.tap("done")
        assertEquals(8, stage.gestures)
        val findings = (stage.screen as Screen.Findings).findings
        rule.onNodeWithTag("findings-head").assertContentDescriptionEquals(findings.spoken)
    }

    @Test
    fun theVoiceHearsWhatToDoAndWhatTheDialShows() {
        val stage = pump()
        tapped(stage, "check")
        rule.onNodeWithTag("check-head").assertContentDescriptionEquals(check(stage).spoken)
        SomeKit.read(stage, "262")
        rule.onNodeWithTag("check-head").assertContentDescriptionEquals(check(stage).spoken)
        rule.onNodeWithTag("dial").performScrollTo().assertContentDescriptionEquals(checkNotNull(check(stage).dial).spoken)
    }

    @Test
    fun oneTypedFigureAfterTheOtherIsWrittenDownOnce() {
        val stage = pump()
        tapped(stage, "check")
        listOf("262", "262", "264").forEachIndexed { place, figure ->
            typed(figure)
            assertEquals(place + 1, check(stage).readings.rows.size)
            field().assert(SemanticsMatcher.expectValue(SemanticsProperties.EditableText, AnnotatedString("")))
        }
        stage.tap("undo")
        assertEquals(2, check(stage).readings.rows.size)
    }

    @Test
    fun whatCannotBeReadIsSaidUnderTheFieldAndStaysInIt() {
        val stage = pump()
        tapped(stage, "check")
        typed("plenty")
        val trouble = checkNotNull(stage.conversation.trouble)
        assertEquals(check(stage).reading.field, trouble.field)
        assertTrue(rule.onAllNodes(said(trouble.whatToDo)).fetchSemanticsNodes().isNotEmpty())
        field().assert(SemanticsMatcher.expectValue(SemanticsProperties.EditableText, AnnotatedString("plenty")))
        field().performTextClearance()
        typed("262")
        assertEquals(1, check(stage).readings.rows.size)
    }

    private fun pump(): Stage = begun().apply { SomeKit.pump(this) }

    private fun check(stage: Stage) = (stage.screen as Screen.Check).check

    private fun field() = rule.onNodeWithTag("type-readings/next")

    private fun typed(figure: String) {
        field().performTextInput(figure)
        field().performImeAction()
        rule.waitForIdle()
    }

    private fun tapped(stage: Stage, key: String) {
        rule.onNodeWithTag(key).performScrollTo()
        stage.tap(key)
    }

    private fun said(words: String) = SemanticsMatcher("says $words") { node ->
        node.config.getOrElseNullable(SemanticsProperties.Text) { null }.orEmpty().any { it.text == words }
    }
}
