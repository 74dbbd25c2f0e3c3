package drawwell.desktop

import java.awt.Toolkit

/** Whether the desk asks for more contrast, where it lets programs know: Windows by a setting, GNOME by the name of a theme. */
object Contrast {
    private const val WINDOWS = "win.highContrast.on"
    private const val THEME = "gnome.Net/ThemeName"
    private const val HIGH = "HighContrast"

    fun higher(ask: (String) -> Any? = Toolkit.getDefaultToolkit()::getDesktopProperty): Boolean =
        ask(WINDOWS) == true || ask(THEME).toString().startsWith(HIGH)
}
