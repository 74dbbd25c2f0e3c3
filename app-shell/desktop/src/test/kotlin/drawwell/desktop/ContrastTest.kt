package drawwell.desktop

import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test

class ContrastTest {
    @Test
    fun isHigherOnlyWhereTheDeskSaysSo() {
        assertTrue(Contrast.higher(mapOf("win.highContrast.on" to true)::get))
        assertTrue(Contrast.higher(mapOf("gnome.Net/ThemeName" to "HighContrastInverse")::get))
        assertFalse(Contrast.higher(mapOf("win.highContrast.on" to false, "gnome.Net/ThemeName" to "Adwaita")::get))
        assertFalse(Contrast.higher { null })
    }
}
