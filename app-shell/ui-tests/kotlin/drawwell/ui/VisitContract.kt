package drawwell.ui

import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.assertContentDescriptionEquals
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.onNodeWithText
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performImeAction
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performTextInput
import androidx.compose.ui.test.performTextReplacement
import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test

/** A sign in two taps and its caution; the record sealed for a consultant or with a passphrase; her plan; and erasing. */
abstract class VisitContract : ShellContract() {
    @Test
    fun aSignIsTwoTapsAndItsCautionOneMoreAndTold() {
        val stage = begun()
        scrolledTo("add-sign")
        stage.tap("add-sign")
        rule.onNodeWithTag("shivering-yes").assertIsDisplayed()
        stage.tap("shivering-yes")
        assertEquals(2, stage.gestures)
        PLACES.forEach { place ->
            stage.say(Event.Go(place))
            val line = stage.screen.frame().notices.single { it.key == "caution" }
            rule.onNodeWithTag("caution").assertExists()
            rule.onNodeWithText(line.text).assertExists()
        }
        stage.say(Event.Go(Place.Now))
        stage.tap("open-caution")
        val findings = (stage.screen as Screen.Findings).findings
        rule.onNodeWithTag("findings-head").assertContentDescriptionEquals(findings.spoken)
        scrolledTo("dealt-doctor_or_midwife")
        stage.tap("dealt-doctor_or_midwife")
        assertTrue(stage.screen.frame().notices.none { it.key == "caution" })
    }

    @Test
    fun aCautionOpensTheDiallerAndNothingDialsByItself() {
        val stage = begun()
        stage.say(Event.Enter("settings", "emergency_call", "112"))
        stage.say(Event.Go(Place.Now))
        scrolledTo("add-sign")
        stage.tap("add-sign")
        scrolledTo("short_of_breath-yes")
        stage.tap("short_of_breath-yes")
        stage.say(Event.Go(Place.Now))
        assertTrue(stage.host.asked.none { it.startsWith("dial") })
        stage.tap("call-emergency-call")
        assertEquals("dial 112", stage.host.asked.last())
    }

    @Test
    fun aSignAndNothingSinceIsAskedAboutInOneTap() {
        val stage = begun()
        scrolledTo("add-sign")
        stage.tap("add-sign")
        scrolledTo("lump-left")
        stage.tap("lump-left")
        stage.host.pass(25 * 3600)
        stage.say(Event.Go(Place.Now))
        stage.tap("since-before-worse")
        rule.onNodeWithTag("caution").assertExists()
    }

    @Test
    fun whatCannotWaitIsAmongTheFirstThingsOfASign() {
        val stage = begun()
        scrolledTo("add-sign")
        stage.tap("add-sign")
        URGENT.forEach { rule.onNodeWithTag(it).assertIsDisplayed() }
    }

    @Test
    fun aLineThatIsPastedTakesTheConsultantInAndHerWordsAreToldAndSeen() {
        val stage = begun()
        known(stage) {
            val findings = (stage.screen as Screen.Findings).findings
            assertEquals(10, findings.figure.split(' ').size)
            rule.onNodeWithTag("findings-head").assertContentDescriptionEquals(findings.spoken)
            assertTrue(findings.figure in findings.spoken)
            largeEnough(stage)
        }
    }

    @Test
    fun aLineThatLostALetterIsSaidAtItsFieldAndStaysToBeMended() {
        val stage = begun()
        stage.say(Event.Go(Place.Sharing))
        type("card", "drawwell:consultant?name=Ada")
        scrolledTo("done-card")
        stage.tap("done-card")
        assertEquals("card", stage.conversation.trouble?.field)
        rule.onNodeWithTag("trouble").assertIsDisplayed()
        rule.onNodeWithText("drawwell:consultant?name=Ada").assertExists()
    }

    @Test
    fun herPlanIsAcceptedOrLeftPartByPart() {
        val stage = begun()
        known(stage) { desk ->
            stage.host.file = folder.root.resolve("sealed")
            stage.tap("words-same")
            stage.tap("share-with")
            stage.conversation.importFile(desk.answers(folder.root.resolve("sealed")).path)
            stage.settle()
            val plan = (stage.screen as Screen.Findings).findings
            rule.onNodeWithTag("findings-head").assertContentDescriptionEquals(plan.spoken)
            largeEnough(stage)
            val answers = plan.sections.map { it.actions }
            assertTrue("${answers.size}", answers.size > 2)
            scrolledTo(answers[0].first().key)
            stage.tap(answers[0].first().key)
            scrolledTo(answers[1].last().key)
            stage.tap(answers[1].last().key)
            rule.onNodeWithTag(answers[0].first().key).assertDoesNotExist()
            stage.tap("undo")
            rule.onNodeWithTag(answers[1].last().key).assertExists()
            scrolledTo("plan-accept-all")
            stage.tap("plan-accept-all")
            rule.onNodeWithTag("plan-accept-all").assertDoesNotExist()
        }
    }

    @Test
    fun aPassphraseIsSentByItsTapAloneAndOpensTheFileAgain() {
        val stage = begun()
        stage.host.file = folder.root.resolve("sealed")
        stage.say(Event.Go(Place.Sharing))
        type("seal-passphrase", SECRET)
        type("card", "x")
        assertFalse("leaving the field sends nothing", folder.root.resolve("sealed").exists())
        scrolledTo("done-seal-passphrase")
        stage.tap("done-seal-passphrase")
        assertTrue(folder.root.resolve("sealed").length() > 0)

        stage.conversation.importFile(folder.root.resolve("sealed").path)
        stage.settle()
        type("open-passphrase", "otter plum kite ancho")
        rule.onNodeWithTag("type-open-passphrase").performImeAction()
        stage.settle()
        assertEquals("open-passphrase", stage.conversation.trouble?.field)
        rule.onNodeWithTag("type-open-passphrase").performTextReplacement(SECRET)
        stage.tap("done-open-passphrase")
        assertEquals(null, stage.conversation.trouble)
    }

    @Test
    fun aPassphraseThatWasTypedIsKeptNowhere() {
        val stage = begun()
        stage.say(Event.Go(Place.Sharing))
        type("seal-passphrase", SECRET)
        stage.say(Event.Go(Place.Now))
        stage.say(Event.Go(Place.Sharing))
        rule.onNodeWithText(SECRET).assertDoesNotExist()
        type("seal-passphrase", SECRET)
        scrolledTo("done-seal-passphrase")
        stage.tap("done-seal-passphrase")
        stage.startAnew()
        stage.say(Event.Go(Place.Sharing))
        rule.onNodeWithText(SECRET).assertDoesNotExist()
        val files = folder.root.walk().filter { it.isFile }.toList()
        assertTrue("only $files", files.isNotEmpty())
        files.forEach { assertFalse("$it holds it", SECRET in it.readText(Charsets.ISO_8859_1)) }
    }

    @Test
    fun allThatIsTouchedIsLargeEnoughAndTurnsRound() {
        val stage = begun()
        stage.say(Event.Add("sign", 0u))
        stage.say(Event.Enter((stage.screen as Screen.Form).form.id, "temperature", "38.7"))
        stage.say(Event.Enter((stage.screen as Screen.Form).form.id, "redness", "left"))
        val key = (stage.screen.frame().notices.single { it.key == "caution" }.actions.single().event as Event.Go).place
        PAGES.plus(key).forEach { place ->
            stage.say(Event.Go(Place.Now))
            stage.say(Event.Go(place))
            largeEnough(stage)
        }
        val right = stage.place(rule.onNodeWithTag("back").fetchSemanticsNode())
        stage.say(Event.Enter("settings", "hand", "left"))
        stage.say(Event.Go(key))
        val left = stage.place(rule.onNodeWithTag("back").fetchSemanticsNode())
        assertEquals(Stage.WIDE - right.right, left.left, 2f)
    }

    @Test
    fun erasingSaysFirstWhatGoesAndLeavesAnEmptyRecord() {
        val stage = begun()
        stage.tap("start")
        stage.say(Event.Go(Place.Erasing))
        val page = (stage.screen as Screen.Findings).findings
        rule.onNodeWithTag("findings-head").assertContentDescriptionEquals(page.spoken)
        page.sections.forEach { section -> scrolledTo(section.key) }
        scrolledTo("erase-record")
        stage.tap("erase-record")
        assertTrue("${stage.screen}", stage.screen is Screen.Welcome)
    }

    /** A consultant whose line was pasted, and the page of her words. */
    private fun known(stage: Stage, then: (SomeDesk) -> Unit) = SomeDesk(folder.root, stage.host::now).use { desk ->
        stage.say(Event.Go(Place.Sharing))
        type("card", desk.card())
        scrolledTo("done-card")
        stage.tap("done-card")
        assertTrue("${stage.conversation.trouble}", stage.screen is Screen.Findings)
        then(desk)
    }

    private fun type(field: String, words: String) {
        scrolledTo("type-$field")
        rule.onNodeWithTag("type-$field").performClick()
        rule.onNodeWithTag("type-$field").performTextInput(words)
        rule.waitForIdle()
    }

    private fun scrolledTo(tag: String) {
        rule.onNodeWithTag(tag).performScrollTo()
        rule.waitForIdle()
    }

    private fun largeEnough(stage: Stage) {
        val touched = rule.onAllNodes(touchable).fetchSemanticsNodes()
        assertTrue("only ${touched.size}", touched.size > 5)
        touched.forEach { node ->
            val place = stage.place(node)
            assertTrue("${node.tag()} is too small: $place", place.width >= 55.9f && place.height >= 55.9f)
            assertTrue("${node.tag()} lies outside: $place", place.left >= -0.5f && place.right <= Stage.WIDE + 0.5f)
        }
    }

    private fun SemanticsNode.tag() = config.getOrNull(SemanticsProperties.TestTag) ?: "untagged $id"

    private companion object {
        const val SECRET = "otter plum kite anchor"
        val PLACES = listOf(Place.Now, Place.Day(0u), Place.Tonight, Place.Supply(28u), Place.Kit, Place.Visit, Place.Family)
        val PAGES = listOf(Place.Visit, Place.Sharing, Place.Sealed, Place.Cautions, Place.Erasing)

        /** One that cannot wait, and the commonest two of today. */
        val URGENT = listOf("shivering-yes", "fainting-yes", "short_of_breath-yes")
        val touchable = SemanticsMatcher("can be touched") {
            it.config.contains(SemanticsActions.OnClick) && !it.config.contains(SemanticsActions.SetText)
        }
    }
}
