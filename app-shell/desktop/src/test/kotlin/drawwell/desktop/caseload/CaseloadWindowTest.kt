package drawwell.desktop.caseload

import androidx.compose.ui.ExperimentalComposeUiApi
import androidx.compose.ui.input.key.Key
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.assertIsNotEnabled
import androidx.compose.ui.test.assertIsSelected
import androidx.compose.ui.test.isFocused
import androidx.compose.ui.test.junit4.v2.createComposeRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performImeAction
import androidx.compose.ui.test.performTextInput
import androidx.compose.ui.test.performKeyInput
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.pressKey
import drawwell.desktop.DesktopTypefaces
import drawwell.desktop.pictures.SomeFamily
import drawwell.surface.Clock
import drawwell.surface.DeskEvent
import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.surface.Weight
import drawwell.ui.caseload.onDesk
import java.awt.datatransfer.DataFlavor
import java.awt.datatransfer.Transferable
import java.io.File
import org.junit.After
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.rules.TemporaryFolder

/** The consultant's window: files opened, dropped and watched for, the keyboard, what is only read, and removed. */
class CaseloadWindowTest {
    @get:Rule(order = 1)
    val rule = createComposeRule()

    @get:Rule(order = 2)
    val folder = TemporaryFolder()

    private lateinit var host: TestCaseloadHost

    @After
    fun close() = host.close()

    @Test
    fun opensASealedFileThatWasPicked() {
        val stage = opened()
        stage.host.file = shared(stage, "Pell")
        stage.tap("pick-record")
        assertEquals(listOf("Pell"), stage.names)
        assertTrue(stage.beside is Screen.Supply)
        rule.onNodeWithTag(stage.rows.single().open!!.key).assertIsSelected()
    }

    @Test
    fun opensFilesThatAreDroppedOnIt() {
        val stage = opened()
        val files = listOf(shared(stage, "Pell"), shared(stage, "Noor"))
        assertEquals(files, Dropped.files(Drop(files + folder.root)))
        Dropped.files(Drop(files)).forEach { stage.importFile(it.path) }
        assertEquals(setOf("Pell", "Noor"), stage.names.toSet())
        assertEquals(emptyList<File>(), Dropped.files(java.awt.datatransfer.StringSelection("words")))
    }

    @Test
    fun aFileOfAnotherProgramIsRefusedInTheWordsOfTheCoreAndNothingChanges() {
        val stage = opened()
        stage.importFile(folder.newFile("letter.txt").apply { writeText("hello") }.path)
        assertTrue(stage.conversation.trouble!!.what.isNotBlank())
        rule.onNodeWithTag("trouble").assertExists()
        assertEquals(emptyList<String>(), stage.names)
        stage.tap("dismiss-trouble")
        assertNull(stage.conversation.trouble)
    }

    @Test
    fun whatComesByItselfLeavesOpenWhatIsOpen() {
        val stage = opened()
        val files = listOf(shared(stage, "Pell"), shared(stage, "Noor"))
        stage.importFile(files.first().path)
        stage.say(Event.Go(Place.Kit))
        stage.conversation.importQuietly(files.last().path)
        stage.conversation.importQuietly(folder.newFile("letter.txt").apply { writeText("hello") }.path)
        rule.waitForIdle()
        assertEquals(setOf("Pell", "Noor"), stage.names.toSet())
        assertEquals("Pell", stage.rows.single { it.open!!.chosen }.title)
        assertTrue(stage.beside is Screen.List)
        assertNull("a folder holds other things too", stage.conversation.trouble)
    }

    @Test
    fun aFolderIsChosenAndLetGoByTheMenu() {
        val stage = opened()
        stage.host.picked = folder.newFolder("inbox")
        val offers = { stage.conversation.caseload!!.menu.actions }
        stage.say(offers().single { it.event.onDesk is DeskEvent.WatchFolder }.event)
        val leave = offers().single { it.event.onDesk is DeskEvent.LeaveFolder }
        assertTrue(leave.label, leave.label.contains("inbox"))
        stage.say(leave.event)
        assertEquals("", stage.host.folderName)
        assertNotNull(offers().single { it.event.onDesk is DeskEvent.WatchFolder })
    }

    @Test
    fun whatWouldChangeAFamilysRecordIsClosed() {
        val stage = opened()
        stage.importFile(shared(stage, "Pell").path)
        stage.say(Event.Go(Place.Now))
        rule.onNodeWithTag("start").assertIsNotEnabled()
        stage.say(Event.Start)
        assertTrue(stage.conversation.trouble!!.what.isNotBlank())
        assertTrue(stage.beside is Screen.Ready)
    }

    @Test
    fun findsAFamilyByAPartOfItsName() {
        val stage = opened()
        listOf("Pell", "Noor", "Ida", "Wim", "Juna").forEach { stage.importFile(shared(stage, it).path) }
        rule.onNodeWithTag("type-find_name").performScrollTo().performTextInput("oo")
        rule.onNodeWithTag("type-find_name").performImeAction()
        rule.waitForIdle()
        assertEquals(listOf("Noor"), stage.names)
        stage.tap("clear-find-name")
        assertEquals(5, stage.names.size)
    }

    @Test
    fun whatCannotWaitIsTallerThanTheRest() {
        val stage = opened()
        listOf("Pell" to "fainting-yes", "Noor" to "nipple_damage-left").forEach { (name, sign) ->
            stage.importFile(shared(stage, name) { notices(sign) }.path)
        }
        val (urgent, other) = stage.rows.map { rule.onNodeWithTag(it.open!!.key).fetchSemanticsNode().size.height }
        assertTrue("$urgent is no taller than $other", urgent > other)
    }

    @Test
    fun removesAFamilyForGood() {
        val stage = opened()
        listOf("Pell", "Noor").forEach { stage.importFile(shared(stage, it).path) }
        val noor = (stage.rows.single { it.title == "Noor" }.open!!.event.onDesk as DeskEvent.OpenFamily).family
        stage.say(Event.OnDesk(DeskEvent.OpenDesk(Place.CaseFamily(noor))))
        rule.onNodeWithTag("remove-family").performScrollTo()
        stage.tap("remove-family")
        rule.onNodeWithTag("erase-family").performScrollTo()
        stage.tap("erase-family")
        assertEquals(listOf("Pell"), stage.names)
        assertTrue(stage.beside is Screen.List)
    }

    @OptIn(ExperimentalComposeUiApi::class)
    @Test
    fun arrowsGoThroughTheListAndEnterOpens() {
        val stage = opened()
        listOf("Pell", "Noor", "Ida").forEach { stage.importFile(shared(stage, it).path) }
        stage.say(Event.OnDesk(DeskEvent.OpenDesk(Place.Desk)))
        val press = { key: Key ->
            rule.onNode(isFocused()).performKeyInput { pressKey(key) }
            rule.waitForIdle()
        }
        listOf(Key.DirectionDown, Key.DirectionDown, Key.DirectionDown, Key.DirectionDown, Key.DirectionUp).forEach(press)
        assertTrue("only an enter opens", stage.rows.none { it.open!!.chosen })
        press(Key.Enter)
        assertEquals(listOf(false, true, false), stage.rows.map { it.open!!.chosen })
    }

    @Test
    fun atTwiceTheTypeNothingIsCutOff() {
        val stage = opened(fontScale = 2f)
        listOf("Pell", "Noor").forEach { name -> stage.importFile(shared(stage, name) { notices("fainting-yes") }.path) }
        val pell = (stage.rows.first().open!!.event.onDesk as DeskEvent.OpenFamily).family
        allSeen()
        stage.say(Event.OnDesk(DeskEvent.OpenDesk(Place.CaseFamily(pell))))
        allSeen()
        stage.card()
        allSeen()
        stage.say(Event.OnDesk(DeskEvent.WritePlan(pell)))
        allSeen()
    }

    @Test
    fun theCardIsToldAndItsLineCanBeMarked() {
        val stage = opened()
        val card = stage.card()
        val told = rule.onNodeWithTag("card-code").fetchSemanticsNode().config[SemanticsProperties.ContentDescription]
        assertEquals(listOf(card.spoken), told)
        listOf("card-line" to card.line, "card-words" to card.words).forEach { (tag, text) ->
            rule.onNodeWithTag(tag).performScrollTo()
            val shown = rule.onNodeWithTag(tag).fetchSemanticsNode().config[SemanticsProperties.Text].joinToString("") { it.text }
            assertEquals(text, shown)
        }
    }

    @Test
    fun aPlanGoesOutAsAFile() {
        val stage = opened()
        stage.importFile(shared(stage, "Pell").path)
        val pell = (stage.rows.single().open!!.event.onDesk as DeskEvent.OpenFamily).family
        stage.say(Event.OnDesk(DeskEvent.WritePlan(pell)))
        val plan = stage.beside as Screen.Findings
        val words = plan.findings.sections.flatMap { it.fields }.first { it.field == "plan_words" }
        stage.say(Event.Enter(words.id, words.field, "As it is, it is good."))
        stage.host.file = folder.root.resolve("plan.age")
        stage.tap(plan.findings.actions.single { it.weight == Weight.MAIN }.key)
        assertNull(stage.conversation.trouble)
        assertTrue(folder.root.resolve("plan.age").length() > 0)
    }

    private fun allSeen() {
        val keys = rule.onAllNodes(clickable).fetchSemanticsNodes().mapNotNull { it.config.getOrNull(SemanticsProperties.TestTag) }
        assertTrue("nothing to tap", keys.size > 3)
        keys.distinct().forEach { key ->
            val node = rule.onNodeWithTag(key)
            val scrolls = generateSequence(node.fetchSemanticsNode().parent) { it.parent }.any { it.config.contains(SemanticsActions.ScrollBy) }
            if (scrolls) node.performScrollTo()
            val found = node.fetchSemanticsNode()
            val seen = found.boundsInRoot.width * found.boundsInRoot.height / (found.size.width * found.size.height.toFloat())
            // A thing taller than the window is read by scrolling it.
            val fits = found.size.height <= CaseloadStage.TALL * CaseloadStage.DENSITY * 0.9f
            assertTrue("$key is cut off: ${seen * 100} %", seen > 0.98f || !fits)
        }
    }

    private fun opened(fontScale: Float = 1f): CaseloadStage {
        host = TestCaseloadHost(DesktopTypefaces.load(), folder.newFolder("desk"), NOW)
        return CaseloadStage(rule, host, fontScale).apply { open() }
    }

    private fun shared(stage: CaseloadStage, name: String, lives: SomeFamily.() -> Unit = {}): File =
        SomeFamily(folder.root.resolve("phone $name"), name, NOW.unixMilliseconds, NOW.zone).use {
            it.lives()
            it.shares(stage.card().line)
        }

    /** What a file manager hands over. */
    private class Drop(private val files: List<File>) : Transferable {
        override fun getTransferDataFlavors() = arrayOf(DataFlavor.javaFileListFlavor)
        override fun isDataFlavorSupported(flavor: DataFlavor) = flavor == DataFlavor.javaFileListFlavor
        override fun getTransferData(flavor: DataFlavor) = files
    }

    private companion object {
        val NOW = Clock(1_780_000_000_000L, "Europe/Berlin")
        val clickable = SemanticsMatcher("can be tapped") { it.config.contains(SemanticsActions.OnClick) }
    }
}
