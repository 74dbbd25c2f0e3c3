package drawwell.desktop

import org.junit.Assert.assertEquals
import org.junit.Test
import java.awt.image.BufferedImage

class IconTest {
    @Test
    fun theMarkIsRoundAndHoldsWaterAtTwoHeights() {
        val picture = Icon.picture() as BufferedImage
        fun at(x: Int, y: Int) = picture.getRGB(x * picture.width / 256, y * picture.height / 256)
        assertEquals(0, at(2, 2) ushr 24)
        assertEquals(WATER, at(60, 130))
        assertEquals(EMPTY, at(200, 120))
        assertEquals(WATER, at(200, 180))
    }

    private companion object {
        const val WATER = 0xFF44758C.toInt()
        const val EMPTY = 0xFFE7DAC6.toInt()
    }
}
