package drawwell.desktop

import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test

class MotionTest {
    @Test
    fun isReducedOnlyWhereTheDeskSaysSo() {
        assertTrue(Motion.reduced { 0 })
        assertFalse(Motion.reduced { 1 })
        assertFalse(Motion.reduced { null })
    }
}
