package drawwell.desktop

import java.awt.Image
import java.awt.SystemTray
import java.awt.TrayIcon

/** Where the system shows words of a program that is out of sight. */
interface Tray {
    fun say(title: String, text: String)

    /** What was said is gone. */
    fun takeBack()
}

/** The tray of this system, if it has one. */
class OwnTray private constructor(private val icon: TrayIcon) : Tray {
    override fun say(title: String, text: String) = icon.displayMessage(title, text, TrayIcon.MessageType.NONE)

    /** Words go with the sign they were said beside. */
    override fun takeBack() {
        SystemTray.getSystemTray().remove(icon)
        SystemTray.getSystemTray().add(icon)
    }

    companion object {
        fun of(picture: () -> Image, opened: () -> Unit): Tray? {
            if (!SystemTray.isSupported()) return null
            val icon = TrayIcon(picture(), "Drawwell").apply {
                isImageAutoSize = true
                addActionListener { opened() }
            }
            SystemTray.getSystemTray().add(icon)
            return OwnTray(icon)
        }
    }
}
