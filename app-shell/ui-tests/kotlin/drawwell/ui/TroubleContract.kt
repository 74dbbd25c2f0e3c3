package drawwell.ui

import androidx.compose.ui.semantics.ProgressBarRangeInfo
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.assertRangeInfoEquals
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performImeAction
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performTextReplacement
import drawwell.surface.Deed
import drawwell.surface.Event
import drawwell.surface.Export
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.surface.Trouble
import drawwell.surface.TroubleKind
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertThrows
import org.junit.Assert.assertTrue
import org.junit.Test

/** What cannot be done is said calmly, and changes nothing. */
abstract class TroubleContract : ShellContract() {
    @Test
    fun whatCannotBeTakenIsSaidAndTheRecordStays() {
        val stage = entry()
        val before = (stage.screen as Screen.Form).form
        type("amount_left", "plenty")
        stage.settle()
        rule.onNodeWithTag("trouble").assertIsDisplayed()
        assertEquals("amount_left", stage.conversation.trouble?.field)
        assertEquals(before, (stage.screen as Screen.Form).form)
        stage.tap("dismiss-trouble")
        rule.onNodeWithTag("trouble").assertDoesNotExist()
    }

    @Test
    fun whatIsTypedAndDoneIsKept() {
        val stage = entry()
        type("amount_left", "65")
        stage.settle()
        assertEquals(null, stage.conversation.trouble)
        val rows = (stage.screen as Screen.Form).form.groups.flatMap { it.rows }
        assertTrue(rows.first { it.field == "amount_left" }.value.startsWith("65"))
    }

    @Test
    fun aRecordThatCannotBeOpenedIsSaidOverTheFirstFrame() {
        folder.root.resolve("record.drawwell").mkdirs()
        val stage = Stage(rule, host())
        stage.open()
        assertEquals(null, stage.conversation.screen)
        assertNotNull(stage.conversation.trouble)
        rule.onNodeWithTag("trouble").assertIsDisplayed()
        folder.root.resolve("record.drawwell").deleteRecursively()
        stage.tap("dismiss-trouble")
        assertTrue(stage.screen is Screen.Welcome)
    }

    @Test
    fun onAFullDiskATapIsRefusedInWordsAndCanBeMadeWhenThereIsRoomAgain() {
        val stage = begun()
        stage.tap("start")
        stage.host.pass(90)
        stage.host.close()
        stage.startAnew()
        val before = stage.whole()
        FullDisk.during(stage.host.record) {
            stage.tap("mark-letdown")
            val told = assertThrows(Trouble.Told::class.java) { stage.core.update(Event.Mark(Deed.LETDOWN), stage.host.now()) }
            assertEquals(TroubleKind.FULL, told.kind)
            assertEquals(Told.of(told), stage.conversation.trouble)
            rule.onNodeWithTag("trouble").assertIsDisplayed()
            assertEquals(0, stage.notches())
        }
        assertEquals(before, stage.whole())
        stage.tap("mark-letdown")
        rule.onNodeWithTag("trouble").assertDoesNotExist()
        assertEquals(1, stage.notches())
        stage.startAnew()
        assertEquals(1, stage.notches())
    }

    @Test
    fun onAFullDiskADrawnLineGoesBackToWhereItWas() {
        val stage = begun()
        stage.host.close()
        stage.startAnew()
        stage.tap("start")
        stage.host.pass(600)
        stage.tap("finish")
        FullDisk.during(stage.host.record) {
            stage.draw("left", 0.5f)
            rule.onNodeWithTag("trouble").assertIsDisplayed()
            rule.onNodeWithTag("column-left").assertRangeInfoEquals(ProgressBarRangeInfo(0f, 0f..1f))
        }
        stage.draw("left", 0.5f)
        val height = checkNotNull((stage.screen as Screen.Amounts).amounts.columns.first().column.height)
        rule.onNodeWithTag("column-left").assertRangeInfoEquals(ProgressBarRangeInfo(height, 0f..1f))
    }

    private fun Stage.notches() = (screen as Screen.Running).running.strip.notches.size

    /** The whole record in the form it is handed over in. */
    private fun Stage.whole(): String = folder.newFile().let {
        core.export(Export.Record, it.path, host.now())
        it.readText()
    }

    private fun entry(): Stage = begun().apply {
        tap("start")
        host.pass(600)
        tap("finish")
        say(Event.Go(Place.Day(0u)))
        say((screen as Screen.Day).day.entries.first().open.event)
    }

    private fun type(field: String, words: String) {
        rule.onNodeWithTag("type-$field").performScrollTo()
        rule.onNodeWithTag("type-$field").performTextReplacement(words)
        rule.onNodeWithTag("type-$field").performImeAction()
    }
}
