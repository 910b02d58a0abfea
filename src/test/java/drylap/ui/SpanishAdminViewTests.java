package drylap.ui;

import static drylap.persistence.jooq.Tables.API_TOKEN;
import static drylap.persistence.jooq.Tables.HOOK;

import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.PasswordField;
import drylap.kernel.Reach;
import drylap.kernel.Ruler;
import drylap.security.Listed;
import drylap.security.Person;
import drylap.security.Role;
import drylap.ui.planner.ViewTest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jooq.DSLContext;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The screens of whoever manages people, by somebody who reads Spanish: nothing on them is English. */
@ViewTest
class SpanishAdminViewTests extends SpanishScreen {
    @Autowired
    private DSLContext db;

    private final List<String> named = new ArrayList<>(List.of(
            "drylap history --noted",
            "window-1",
            "http://office.example/told",
            "https://office.example/told",
            "https://…",
            "Authorization: Bearer",
            "/api/v1/openapi.json",
            "HMAC-SHA-256",
            "Drylap-Signature",
            "Drylap-Sent-At",
            "Drylap-Delivery"));

    @BeforeEach
    void an_administrator_is_there() {
        db.deleteFrom(API_TOKEN).execute();
        db.deleteFrom(HOOK).execute();
        Person who = reads(people.add(Role.ADMINISTRATOR, Reach.EVERYWHERE, null), Ruler.MILLIMETRES);
        keeper.all(who).stream().map(Listed::person).forEach(this::name);
    }

    /** Names are data, the longest first, since one may be within another. */
    private void name(Person one) {
        named.add(one.name());
        named.add(one.signInName());
        one.reach().sites().forEach(site -> named.add("obras: " + site));
        if (one.crew() != null) named.add("cuadrilla " + one.crew());
        named.sort(Comparator.comparingInt(String::length).reversed());
    }

    @Override
    List<String> codes() {
        return named;
    }

    @Test
    void the_administrator_finds_no_english_at_the_people() {
        isSpanish("people", "Personas", "administrador", "todas las obras", "Otros programas");
        pressed("Agregar una persona");
        pressed("Guardar");
        shows("Una persona nueva", "12 caracteres o más", "se aceptan: 2 a 80 letras");
        typed("Nombre para entrar", "seis");
        pressed("Guardar");
        shows("el nombre tiene 0 caracteres; se acepta: 1 a 80");
        typed("Nombre", "Seis");
        pressed("Guardar");
        shows("una persona con la función cuadrilla de ventanas trabaja en una cuadrilla: nómbrela");
    }

    @Test
    void the_administrator_finds_no_english_where_a_password_is_set() {
        Person one = people.add(Role.SCHEDULER, Reach.EVERYWHERE, null);
        name(one);
        open("people");
        pressedFor("Contraseña de " + one.name());
        find(PasswordField.class).single().setValue("password2026!");
        pressed("Fijar la contraseña");
        shows("Terminan todas las sesiones de esta persona.", "queda 1 carácter; se aceptan 6 o más");
        find(PasswordField.class).single().setValue("estrella2024");
        pressed("Fijar la contraseña");
        shows("Demasiado fácil de adivinar", "los nombres no cuentan", "durante 7 días");
    }

    @Test
    void the_administrator_finds_no_english_where_somebody_is_taken_away() {
        Person one = people.add(Role.SCHEDULER, Reach.EVERYWHERE, null);
        name(one);
        named.add("person " + one.id().value());
        open("people");
        pressedFor("Quitar a " + one.name());
        shows("ocupará el lugar del nombre", "Quitar para siempre");
        pressed("Quitar para siempre");
        shows("quitada");
    }

    @Test
    void the_administrator_finds_no_english_at_the_history_but_its_lines() {
        keeper.signOutEverywhere(
                people.person(
                        people.add(Role.ADMINISTRATOR, Reach.NOWHERE, null).id()),
                people.scheduler().id());
        isSpanish("history", "Quién cambió qué", "Cada línea se escribe una sola vez, en inglés");
    }

    @Test
    void the_administrator_finds_no_english_at_the_tokens_of_programs() {
        isSpanish("programs", "Claves de acceso", "Todavía no hay ninguna clave de acceso");
        pressed("Hacer una clave de acceso");
        pressed("Hacer");
        shows("Una clave de acceso nueva", "el nombre tiene 0 caracteres; se acepta: 1 a 80", "90 días");
        typed("Nombre", "seis");
        pressed("Hacer");
        find(Span.class).withClassName("secret").single().setText("");
        shows("Se muestra ahora y nunca más", "El programa la envía con cada petición");
        pressed("Hecho");
        shows("actúa por", "puede leer cada obra", "toda obra de la persona", "todavía sin usar");
        pressed("Anular");
        shows("anulada");
    }

    @Test
    void the_administrator_finds_no_english_at_the_hooks_of_programs() {
        open("programs");
        pressed("Hacer un aviso");
        typed("Nombre", "seis");
        typed("Dirección", "http://office.example/told");
        pressed("Hacer");
        shows("Un aviso nuevo", "no empieza como debe; se acepta: https://…");
        typed("Dirección", "https://office.example/told");
        pressed("Hacer");
        find(Span.class).withClassName("secret").single().setText("");
        shows("Cada mensaje lleva el encabezado");
        pressed("Hecho");
        shows("se le avisa de cada abertura liberada, aceptada, devuelta; toda obra de la persona");
        pressed("Terminar");
        shows("Todavía no hay ningún aviso.");
    }
}
