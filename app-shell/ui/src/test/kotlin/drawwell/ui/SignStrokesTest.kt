package drawwell.ui

import androidx.compose.ui.graphics.vector.PathNode
import androidx.compose.ui.graphics.vector.PathParser
import drawwell.surface.Sign
import drawwell.ui.pictures.SignStrokes
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** Each sign is drawn, and no two are alike. */
class SignStrokesTest {
    private val drawn = Sign.entries.filter { it != Sign.NONE }

    @Test
    fun everySignIsDrawn() {
        drawn.forEach { sign ->
            val nodes = PathParser().parsePathString(SignStrokes.of(sign)).toNodes()
            assertTrue("$sign", nodes.size > 1)
            assertTrue("$sign", nodes.first() is PathNode.MoveTo)
        }
    }

    @Test
    fun noTwoAreAlike() {
        assertEquals(drawn.size, drawn.map(SignStrokes::of).toSet().size)
    }
}
