package drawwell.ui

import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** Only what changed is composed again: what lies on the way down to it, and it. */
abstract class RecompositionContract : ShellContract() {
    @Test
    fun aSecondThatPassesMovesTheTimeAndTheStripAndNothingThatIsTouched() {
        val stage = running()
        val composed = Recomposed.during {
            stage.host.pass(1)
            stage.conversation.lookAgain()
            stage.settle()
        }
        assertEquals((WAY_DOWN + listOf("RunningView", "Figure", "OneLine", "StripPicture")).associateWith { 1 }, composed)
    }

    @Test
    fun whereNothingChangedNothingIsComposed() {
        val stage = running()
        val composed = Recomposed.during {
            stage.conversation.lookAgain()
            stage.settle()
        }
        assertEquals(emptyMap<String, Int>(), composed)
    }

    @Test
    fun aThumbThatDrawsMovesItsOwnColumnAndWhatIsReadOverIt() {
        val stage = amounts()
        val composed = Recomposed.during { stage.hold("left", 0.3f, 0.6f, 0.8f) }
        assertEquals(listOf("Drawable", "DrawnColumn", "Head", "OneLine", "Shaft", "rising").associateWith { 3 }, composed)
    }

    @Test
    fun whatWasDrawnIsAnsweredInItsOwnColumn() {
        val stage = amounts()
        stage.hold("left", 0.3f)
        val composed = Recomposed.during { stage.letGo("left") }
        val measured = listOf("largeType", "scaleWidth")
        val column = listOf("Drawable", "DrawnColumn", "Head", "AmountSteps", "Shaft", "rising")
        assertEquals((WAY_DOWN + "AmountsView" + measured + column).toSet(), composed.keys)
        // Once as the thumb lets go of it, and once with the answer.
        assertTrue("$composed", composed.filterKeys { it in column }.values.all { it <= 2 })
    }

    private fun running(): Stage = begun().apply {
        tap("start")
        host.pass(30)
        tap("mark-letdown")
    }

    private fun amounts(): Stage = running().apply {
        host.pass(600)
        tap("finish")
        draw("left", 0.5f)
    }

    private companion object {
        val WAY_DOWN = listOf("Shell", "ScreenView", "Placed", "Drawn")
    }
}
